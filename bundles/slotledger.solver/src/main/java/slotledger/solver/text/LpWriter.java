package slotledger.solver.text;

import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.IntegerProgramme.Variable;
import slotledger.solver.Linear;

/**
 * Writes the LP format, as the manual of CPLEX describes it and free solvers read it. A row with two different limits
 * becomes two rows, because readers disagree on ranges.
 */
final class LpWriter {

    /** Shorter than any reader's longest line. */
    private static final int LONGEST = 100;

    private final IntegerProgramme programme;
    private final Appendable out;
    private final List<String> names = new ArrayList<>();

    LpWriter(IntegerProgramme programme, Appendable out) {
        this.programme = programme;
        this.out = out;
        for (Variable variable : programme.variables()) {
            names.add(SafeNames.variable(names.size(), variable.name()));
        }
    }

    void write(Linear goal, String title) throws IOException {
        out.append("\\ ").append(SafeNames.comment(title)).append("\nMinimize\n");
        sum("goal", goal, "");
        out.append("Subject To\n");
        for (int i = 0; i < programme.rows().size(); i++) {
            row(i, programme.rows().get(i));
        }
        out.append("Bounds\n");
        for (int i = 0; i < names.size(); i++) {
            Variable each = programme.variables().get(i);
            out.append(" %d <= %s <= %d\n".formatted(each.low(), names.get(i), each.high()));
        }
        out.append("General\n");
        for (String name : names) {
            out.append(' ').append(name).append('\n');
        }
        out.append("End\n");
    }

    private void row(int number, Row row) throws IOException {
        String name = SafeNames.row(number, row.name());
        if (row.low() == row.high()) {
            sum(name, row.sum(), " = " + row.low());
            return;
        }
        if (row.low() != IntegerProgramme.NO_LOW) {
            sum("l" + name, row.sum(), " >= " + row.low());
        }
        if (row.high() != IntegerProgramme.NO_HIGH) {
            sum("h" + name, row.sum(), " <= " + row.high());
        }
    }

    private void sum(String name, Linear sum, String limit) throws IOException {
        StringBuilder line = new StringBuilder(" ").append(name).append(':');
        if (sum.isEmpty()) {
            line.append(" 0 ").append(names.get(0));
        }
        StringBuilder lines = new StringBuilder();
        sum.forEach((variable, factor) -> {
            String term = (factor < 0 ? " - " : " + ") + Long.toString(factor).replace("-", "") + " "
                    + names.get(variable);
            if (line.length() + term.length() > LONGEST) {
                lines.append(line).append('\n');
                line.setLength(0);
                line.append(' ');
            }
            line.append(term);
        });
        out.append(lines).append(line).append(limit).append('\n');
    }
}
