package slotledger.intake.internal.template;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.ClientAnchor;
import org.apache.poi.ss.usermodel.Comment;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.usermodel.Workbook;
import org.apache.poi.xssf.usermodel.XSSFWorkbook;
import slotledger.intake.IntakeException;
import slotledger.intake.internal.report.BookStyles;
import slotledger.intake.internal.report.PrintPages;
import slotledger.intake.internal.report.SafeCells;
import slotledger.intake.internal.report.WholeFile;

/**
 * Writes the fill-in files: workbooks with explanations on their headings and an example row, and three text files.
 * They have the names a project's files have, so that the folder can be used once they are filled in.
 */
public final class Templates {

    /** The sheet of explanations in each workbook. */
    public static final String HELP = "How to fill in";
    private static final int NARROWEST = 12;
    private static final int WIDEST = 36;

    public List<Path> write(Path folder) throws IntakeException {
        List<Path> written = new ArrayList<>();
        written.add(table(folder.resolve("fleet.xlsx"), "Fleet", TemplateSheets.FLEET,
                "One row a machine. Columns may stand in any order, and headings may be in other languages. "
                        + "Every row that can't be used is named in the findings; none is lost."));
        written.add(table(folder.resolve("offers.xlsx"), "Offers", TemplateSheets.OFFERS,
                "One row a part. Several suppliers may stand in one sheet, or each on a sheet of its own."));
        written.add(table(folder.resolve("shelf.xlsx"), "Shelf", TemplateSheets.SHELF,
                "One row a kind of module that you own and that is in no machine."));
        written.add(text("policy-template.yaml", folder.resolve("policy.yaml")));
        written.add(text("choices-template.yaml", folder.resolve("choices.yaml")));
        written.add(text("mapping-template.txt", folder.resolve("mapping.txt")));
        // Not beside policy.yaml: a project has one policy.
        written.add(policy(folder.resolve("instead-of-policy-yaml").resolve("policy.xlsx")));
        return written;
    }

    private static Path text(String name, Path target) throws IntakeException {
        WholeFile.write(target, out -> {
            try (InputStream in = Templates.class.getResourceAsStream(name)) {
                if (in == null) {
                    throw new IOException("the template %s is missing in the product".formatted(name));
                }
                in.transferTo(out);
            }
        });
        return target;
    }

    private static Path table(Path target, String name, List<TemplateColumn> columns,
            String about) throws IntakeException {
        WholeFile.write(target, out -> {
            try (Workbook book = new XSSFWorkbook()) {
                BookStyles styles = new BookStyles(book);
                Sheet sheet = book.createSheet(name);
                Row headings = sheet.createRow(0);
                Row example = sheet.createRow(1);
                for (int i = 0; i < columns.size(); i++) {
                    TemplateColumn column = columns.get(i);
                    SafeCells.text(headings.createCell(i), column.heading(), styles.heading());
                    headings.getCell(i).setCellComment(note(sheet, headings.getCell(i), column.explanation()));
                    value(example.createCell(i), column.example(), styles);
                    int width = Math.max(column.heading().length(), column.example().length()) + 2;
                    sheet.setColumnWidth(i, Math.min(WIDEST, Math.max(NARROWEST, width)) * 256);
                }
                sheet.createFreezePane(0, 1);
                PrintPages.landscape(sheet, 0);
                help(book, styles, about + " The row that begins with EXAMPLE, or holds it, is skipped; delete it.",
                        columns.stream().map(column -> List.of(column.heading(), column.explanation())).toList());
                book.write(out);
            }
        });
        return target;
    }

    private static Path policy(Path target) throws IntakeException {
        WholeFile.write(target, out -> {
            try (Workbook book = new XSSFWorkbook()) {
                BookStyles styles = new BookStyles(book);
                Sheet sheet = book.createSheet("Policy");
                for (int i = 0; i < TemplateSheets.POLICY.size(); i++) {
                    List<String> texts = TemplateSheets.POLICY.get(i);
                    Row row = sheet.createRow(i);
                    for (int j = 0; j < texts.size(); j++) {
                        boolean heading = texts.size() == 1 || texts.get(0).equals("role") && texts.size() > 2;
                        if (heading) {
                            SafeCells.text(row.createCell(j), texts.get(j), styles.heading());
                        } else if (!texts.get(j).isEmpty()) {
                            plain(row.createCell(j), texts.get(j));
                        }
                    }
                }
                sheet.setColumnWidth(0, 24 * 256);
                for (int i = 1; i <= 5; i++) {
                    sheet.setColumnWidth(i, 16 * 256);
                }
                help(book, styles,
                        "Keep the words of the first column and the headings; change what stands beside or below.",
                        TemplateSheets.POLICY_HELP);
                book.write(out);
            }
        });
        return target;
    }

    private static void help(Workbook book, BookStyles styles, String about, List<List<String>> rows) {
        Sheet sheet = book.createSheet(HELP);
        sheet.setColumnWidth(0, 26 * 256);
        sheet.setColumnWidth(1, 90 * 256);
        PrintPages.landscape(sheet, 0);
        SafeCells.text(sheet.createRow(0).createCell(1), about, styles.wrapped());
        for (int i = 0; i < rows.size(); i++) {
            Row row = sheet.createRow(i + 2);
            SafeCells.text(row.createCell(0), rows.get(i).get(0), styles.wrapped());
            SafeCells.text(row.createCell(1), rows.get(i).get(1), styles.wrapped());
        }
    }

    private static void value(Cell cell, String text, BookStyles styles) {
        plain(cell, text);
        cell.setCellStyle(styles.italic());
    }

    private static void plain(Cell cell, String text) {
        if (text.matches("\\d{1,9}(\\.\\d+)?")) {
            cell.setCellValue(Double.parseDouble(text));
        } else {
            SafeCells.text(cell, text, null);
        }
    }

    private static Comment note(Sheet sheet, Cell cell, String text) {
        ClientAnchor anchor = sheet.getWorkbook().getCreationHelper().createClientAnchor();
        anchor.setCol1(cell.getColumnIndex());
        anchor.setCol2(cell.getColumnIndex() + 3);
        anchor.setRow1(cell.getRowIndex() + 1);
        anchor.setRow2(cell.getRowIndex() + 5 + text.length() / 60);
        Comment comment = sheet.createDrawingPatriarch().createCellComment(anchor);
        comment.setString(sheet.getWorkbook().getCreationHelper().createRichTextString(text));
        comment.setAuthor("Slotledger");
        return comment;
    }
}
