package slotledger.intake.internal.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.CreationHelper;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFSheet;
import slotledger.intake.internal.sheet.Cell;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;

/**
 * One sheet of an inventory as it is, with notes on the cells that have findings and two columns that say so in
 * words.
 */
final class MirrorSheet {

    private static final int TEXT_WIDTH = 70;

    private final SXSSFSheet sheet;
    private final SheetShape shape;
    private final BookStyles styles;
    private final Map<Integer, List<Finding>> byRow;
    private final Notes notes;

    /** How many notes may still be put on cells; they are kept in memory. */
    static final class Notes {
        private int left;

        Notes(int left) {
            this.left = left;
        }

        boolean take() {
            return left-- > 0;
        }
    }

    MirrorSheet(SXSSFSheet sheet, SheetShape shape, BookStyles styles, Map<Integer, List<Finding>> byRow, Notes notes) {
        this.sheet = sheet;
        this.shape = shape;
        this.styles = styles;
        this.byRow = byRow;
        this.notes = notes;
    }

    void begin() {
        shape.widths.forEach((column, width) -> sheet.setColumnWidth(column - 1, width * 256));
        shape.hiddenColumns.stream().filter(column -> column <= shape.lastColumn)
                .forEach(column -> sheet.setColumnHidden(column - 1, true));
        sheet.setColumnWidth(shape.lastColumn, 12 * 256);
        sheet.setColumnWidth(shape.lastColumn + 1, TEXT_WIDTH * 256);
        if (shape.headerRow > 0) {
            sheet.createFreezePane(0, shape.headerRow);
            PrintPages.landscape(sheet, shape.headerRow - 1);
            if (shape.lastRow > shape.headerRow) {
                sheet.setAutoFilter(new CellRangeAddress(shape.headerRow - 1, shape.lastRow - 1, 0, shape.lastColumn
                        + 1));
            }
        }
    }

    void row(int number, List<Cell> cells) {
        Row row = sheet.createRow(number - 1);
        List<Finding> findings = byRow.getOrDefault(number, List.of());
        boolean header = number == shape.headerRow;
        for (Cell cell : cells) {
            List<Finding> here = at(findings, cell.column());
            write(row, cell, worst(here), header);
        }
        note(row, findings);
        if (header) {
            SafeCells.text(row.createCell(shape.lastColumn), "Finding", styles.heading());
            SafeCells.text(row.createCell(shape.lastColumn + 1), "What is the matter, what to do", styles.heading());
        } else if (!findings.isEmpty()) {
            Optional<Severity> worst = worst(findings);
            SafeCells.text(row.createCell(shape.lastColumn), worst.orElseThrow().text(),
                    styles.cell(worst, false, false));
            SafeCells.text(row.createCell(shape.lastColumn + 1), text(findings), styles.wrapped());
            PrintPages.makeRoom(row, text(findings), TEXT_WIDTH);
        }
    }

    private static List<Finding> at(List<Finding> findings, int column) {
        return findings.stream().filter(finding -> finding.place().column().orElse(0) == column).toList();
    }

    private static Optional<Severity> worst(List<Finding> findings) {
        return findings.stream().map(Finding::severity).min(Comparator.naturalOrder());
    }

    private void write(Row row, Cell cell, Optional<Severity> severity, boolean header) {
        org.apache.poi.ss.usermodel.Cell written = row.createCell(cell.column() - 1);
        boolean number = !Double.isNaN(cell.number());
        boolean quoted = SafeCells.looksLikeFormula(cell.text());
        switch (cell.type()) {
            case NUMBER, DATE -> {
                if (number) {
                    written.setCellValue(cell.number());
                } else {
                    SafeCells.text(written, cell.text(), null);
                }
            }
            case TEXT, BOOLEAN, ERROR -> SafeCells.text(written, cell.text(), null);
        }
        written.setCellStyle(header && severity.isEmpty() ? styles.heading()
                : styles.cell(severity, number && cell.type() == Cell.Type.DATE, quoted && !number));
    }

    /** Notes on the cells concerned, also on empty ones. */
    private void note(Row row, List<Finding> findings) {
        int[] columns = findings.stream().flatMapToInt(finding -> finding.place().column().stream()).sorted().distinct()
                .toArray();
        for (int column : columns) {
            if (column > shape.lastColumn || !notes.take()) {
                continue;
            }
            List<Finding> here = at(findings, column);
            org.apache.poi.ss.usermodel.Cell cell = row.getCell(column - 1);
            if (cell == null) {
                cell = row.createCell(column - 1);
                cell.setCellStyle(styles.cell(worst(here), false, false));
            }
            cell.setCellComment(comment(cell, text(here)));
        }
    }

    private Comment comment(org.apache.poi.ss.usermodel.Cell cell, String text) {
        CreationHelper helper = sheet.getWorkbook().getCreationHelper();
        ClientAnchor anchor = helper.createClientAnchor();
        anchor.setCol1(cell.getColumnIndex() + 1);
        anchor.setCol2(cell.getColumnIndex() + 5);
        anchor.setRow1(cell.getRowIndex());
        anchor.setRow2(cell.getRowIndex() + 4 + text.length() / 60);
        Comment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
        comment.setString(helper.createRichTextString(text));
        comment.setAuthor("Slotledger");
        // The note begins life at its box, one cell to the right; left to right, no two are ever in one place.
        comment.setAddress(cell.getRowIndex(), cell.getColumnIndex());
        return comment;
    }

    private static String text(List<Finding> findings) {
        List<String> lines = new ArrayList<>();
        for (Finding finding : findings) {
            lines.add(finding.severity().text() + ": " + finding.message()
                    + (finding.expected().isEmpty() ? "" : " Expected: " + finding.expected() + ".") + " "
                            + finding.remedy());
        }
        return lines.stream().distinct().collect(Collectors.joining("\n"));
    }
}
