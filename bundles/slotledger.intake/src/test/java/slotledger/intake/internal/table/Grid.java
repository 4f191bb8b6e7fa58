package slotledger.intake.internal.table;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.sheet.CellRange;
import slotledger.intake.internal.sheet.SheetFile;
import slotledger.intake.internal.sheet.SheetVisitor;
import slotledger.model.task.Progress;

/**
 * A workbook as text. Cells are divided by |. A number is a number; a cell that begins with @ is a date, ! an error,
 *  ~ a number
 * stored as text. "== Name" begins a sheet, "=? Name" a hidden one, "=m 2 1 5 1" merges, "=h 3" hides a column.
 */
public final class Grid implements SheetFile {

    private final String text;

    public Grid(String text) {
        this.text = text;
    }

    @Override
    public void read(Path file, SheetVisitor visitor, Progress progress) {
        Map<String, List<String>> sheets = new LinkedHashMap<>();
        List<String> lines = null;
        for (String line : text.split("\n")) {
            if (line.startsWith("== ") || line.startsWith("=? ")) {
                lines = sheets.computeIfAbsent(line, name -> new ArrayList<>());
            } else {
                lines = lines == null ? sheets.computeIfAbsent("== ", name -> new ArrayList<>()) : lines;
                lines.add(line);
            }
        }
        sheets.forEach((name, rows) -> sheet(name, rows, visitor));
    }

    private static void sheet(String name, List<String> lines, SheetVisitor visitor) {
        visitor.startSheet(name.substring(3), name.startsWith("=?"));
        List<CellRange> merged = new ArrayList<>();
        Set<Integer> hidden = new TreeSet<>();
        int number = 0;
        for (String line : lines) {
            if (line.startsWith("=m ")) {
                String[] ends = line.substring(3).split(" ");
                merged.add(new CellRange(Integer.parseInt(ends[0]), Integer.parseInt(ends[1]),
                        Integer.parseInt(ends[2]),
                        Integer.parseInt(ends[3])));
            } else if (line.startsWith("=h ")) {
                hidden.add(Integer.parseInt(line.substring(3)));
            } else {
                number++;
                List<Cell> cells = cells(line);
                if (!cells.isEmpty()) {
                    visitor.row(number, cells);
                }
            }
        }
        visitor.endSheet(merged, hidden);
    }

    private static List<Cell> cells(String line) {
        List<Cell> cells = new ArrayList<>();
        int column = 0;
        for (String part : line.split("\\|", -1)) {
            column++;
            String cell = part.strip();
            if (!cell.isEmpty()) {
                cells.add(cell(column, cell));
            }
        }
        return cells;
    }

    private static Cell cell(int column, String cell) {
        if (cell.matches("-?\\d+([.]\\d+)?")) {
            return new Cell(column, Cell.Type.NUMBER, cell, Double.parseDouble(cell));
        }
        return switch (cell.charAt(0)) {
            case '@' -> new Cell(column, Cell.Type.DATE, cell.substring(1), 45_000);
            case '!' -> new Cell(column, Cell.Type.ERROR, cell.substring(1), Double.NaN);
            case '~' -> new Cell(column, Cell.Type.TEXT, cell.substring(1), Double.NaN);
            default -> new Cell(column, Cell.Type.TEXT, cell, Double.NaN);
        };
    }
}
