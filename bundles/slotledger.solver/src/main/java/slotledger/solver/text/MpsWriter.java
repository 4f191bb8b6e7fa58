package slotledger.solver.text;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.IntegerProgramme.Variable;
import slotledger.solver.Linear;

/**
 * Writes the free MPS format: fields parted by blanks, names of any length. Both limits of every variable are said,
 * because readers disagree on those of whole numbers; a row with two different limits becomes two rows.
 */
final class MpsWriter {

    private static final String GOAL = "goal";

    private record Entry(String row, long factor) {
    }

    private record Limit(String row, long value) {
    }

    private final IntegerProgramme programme;
    private final Appendable out;
    private final List<List<Entry>> columns = new ArrayList<>();
    private final List<Limit> limits = new ArrayList<>();

    MpsWriter(IntegerProgramme programme, Appendable out) {
        this.programme = programme;
        this.out = out;
        programme.variables().forEach(variable -> columns.add(new ArrayList<>()));
    }

    void write(Linear goal, String title) throws IOException {
        out.append("* ").append(SafeNames.comment(title)).append("\nNAME slotledger\nROWS\n N ").append(GOAL)
                .append('\n');
        goal.forEach((variable, factor) -> columns.get(variable).add(new Entry(GOAL, factor)));
        for (int i = 0; i < programme.rows().size(); i++) {
            row(i, programme.rows().get(i));
        }
        out.append("COLUMNS\n MARK0 'MARKER' 'INTORG'\n");
        for (int i = 0; i < columns.size(); i++) {
            column(name(i), columns.get(i));
        }
        out.append(" MARK1 'MARKER' 'INTEND'\nRHS\n");
        for (Limit limit : limits) {
            line("RHS", limit.row(), limit.value());
        }
        out.append("BOUNDS\n");
        for (int i = 0; i < columns.size(); i++) {
            bounds(name(i), programme.variables().get(i));
        }
        out.append("ENDATA\n");
    }

    private String name(int variable) {
        return SafeNames.variable(variable, programme.variables().get(variable).name());
    }

    private void row(int number, Row row) throws IOException {
        String name = SafeNames.row(number, row.name());
        if (row.low() == row.high()) {
            row("E", name, row.sum(), row.low());
            return;
        }
        if (row.low() != IntegerProgramme.NO_LOW) {
            row("G", "l" + name, row.sum(), row.low());
        }
        if (row.high() != IntegerProgramme.NO_HIGH) {
            row("L", "h" + name, row.sum(), row.high());
        }
    }

    private void row(String type, String name, Linear sum, long limit) throws IOException {
        out.append(' ').append(type).append(' ').append(name).append('\n');
        sum.forEach((variable, factor) -> columns.get(variable).add(new Entry(name, factor)));
        if (limit != 0) {
            limits.add(new Limit(name, limit));
        }
    }

    private void column(String name, List<Entry> entries) throws IOException {
        if (entries.isEmpty()) {
            line(name, GOAL, 0);
        }
        for (Entry entry : entries) {
            line(name, entry.row(), entry.factor());
        }
    }

    private void bounds(String name, Variable variable) throws IOException {
        if (variable.low() == variable.high()) {
            line("FX BOUND", name, variable.low());
        } else {
            line("LO BOUND", name, variable.low());
            line("UP BOUND", name, variable.high());
        }
    }

    private void line(String first, String second, long number) throws IOException {
        out.append(' ').append(first).append(' ').append(second).append(' ').append(Long.toString(number)).append('\n');
    }
}
