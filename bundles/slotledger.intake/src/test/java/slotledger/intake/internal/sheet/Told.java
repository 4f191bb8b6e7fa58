package slotledger.intake.internal.sheet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Assertions;
import slotledger.intake.IntakeException;
import slotledger.model.finding.Finding;
import slotledger.model.task.Progress;

/** Keeps all a reader tells, and shows it as text. */
final class Told implements SheetVisitor {

    static final class Sheet {
        final String name;
        final boolean hidden;
        final TreeMap<Integer, List<Cell>> rows = new TreeMap<>();
        final Set<Integer> hiddenRows = new TreeSet<>();
        List<CellRange> merged;
        Set<Integer> hiddenColumns;

        Sheet(String name, boolean hidden) {
            this.name = name;
            this.hidden = hidden;
        }

        Cell cell(int row, int column) {
            return rows.getOrDefault(row, List.of()).stream().filter(cell -> cell.column() == column)
                    .findFirst().orElse(null);
        }

        String text(int row, int column) {
            Cell cell = cell(row, column);
            return cell == null ? "" : cell.text();
        }
    }

    final List<Sheet> sheets = new ArrayList<>();

    static Told of(Path file) throws IntakeException {
        Told told = new Told();
        new SheetFiles().read(file, told, Progress.NONE);
        return told;
    }

    /** The finding with which a file is refused. */
    static Finding refusal(Path file) {
        IntakeException refused = Assertions.assertThrows(IntakeException.class, () -> of(file));
        return refused.finding();
    }

    Sheet sheet() {
        return sheets.get(0);
    }

    @Override
    public void startSheet(String name, boolean hidden) {
        sheets.add(new Sheet(name, hidden));
    }

    @Override
    public void hiddenRow(int number) {
        last().hiddenRows.add(number);
    }

    @Override
    public void row(int number, List<Cell> cells) {
        Assertions.assertFalse(cells.isEmpty(), "a row without cells is not told");
        last().rows.put(number, List.copyOf(cells));
    }

    @Override
    public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
        last().merged = List.copyOf(merged);
        last().hiddenColumns = Set.copyOf(hiddenColumns);
    }

    private Sheet last() {
        return sheets.get(sheets.size() - 1);
    }

    /** One line a row: "3: A=text B=8 C=2024-03-01"; a letter after the column for all that is not text. */
    @Override
    public String toString() {
        StringBuilder lines = new StringBuilder();
        for (Sheet sheet : sheets) {
            sheet.rows.forEach((number, cells) -> {
                lines.append(number).append(':');
                cells.forEach(cell -> lines.append(' ').append(slotledger.model.source.Place.letters(cell.column()))
                        .append(cell.type() == Cell.Type.TEXT ? "" : "/" + cell.type().name().charAt(0))
                        .append('=').append(cell.text()));
                lines.append('\n');
            });
        }
        return lines.toString();
    }
}
