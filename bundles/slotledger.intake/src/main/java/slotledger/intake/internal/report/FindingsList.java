package slotledger.intake.internal.report;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.common.usermodel.HyperlinkType;
import org.apache.poi.ss.usermodel.Cell;
import org.apache.poi.ss.usermodel.Hyperlink;
import org.apache.poi.ss.usermodel.Row;
import org.apache.poi.ss.usermodel.Sheet;
import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xssf.streaming.SXSSFWorkbook;
import slotledger.model.finding.Finding;
import slotledger.model.source.Place;

/** The first sheet: every finding, one a row, to be sorted and filtered. */
final class FindingsList {

    static final String NAME = "Findings";
    private static final List<String> HEADINGS =
            List.of("Severity", "Machine", "File", "Sheet", "Row", "Column", "Heading",
            "What is the matter", "Seen", "Expected", "What to do", "Check");
    private static final List<Integer> WIDTHS = List.of(10, 12, 20, 16, 7, 9, 16, 50, 20, 22, 64, 18);
    /** A spreadsheet program holds no more rows. */
    private static final int MOST = 1_048_000;
    /** Links are kept in memory. */
    private static final int MOST_LINKS = 5_000;

    private final SXSSFWorkbook book;
    private final BookStyles styles;

    FindingsList(SXSSFWorkbook book, BookStyles styles) {
        this.book = book;
        this.styles = styles;
    }

    /**
     * Writes the list.
     *
     * @param mirrors name of the mirrored sheet by file and sheet
     */
    void write(List<Finding> findings, Map<List<String>, String> mirrors) {
        Sheet sheet = book.createSheet(NAME);
        Row heading = sheet.createRow(0);
        for (int i = 0; i < HEADINGS.size(); i++) {
            SafeCells.text(heading.createCell(i), HEADINGS.get(i), styles.heading());
            sheet.setColumnWidth(i, WIDTHS.get(i) * 256);
        }
        sheet.createFreezePane(0, 1);
        PrintPages.landscape(sheet, 0);
        int number = 1;
        List<Finding> worstFirst = findings.stream().sorted(Comparator.comparing(Finding::severity)).limit(MOST)
                .toList();
        for (Finding finding : worstFirst) {
            write(sheet.createRow(number), finding, Optional.ofNullable(mirrors.get(List.of(finding.place().file(),
                    finding.place().sheet()))).filter(name -> findings.size() <= MOST_LINKS));
            number++;
        }
        if (findings.isEmpty()) {
            SafeCells.text(sheet.createRow(1).createCell(0), "No findings.", styles.wrapped());
        }
        if (findings.size() > MOST) {
            SafeCells.text(sheet.createRow(number).createCell(0), "%d more findings don't fit on this sheet."
                    .formatted(findings.size() - MOST), styles.wrapped());
        }
        sheet.setAutoFilter(new CellRangeAddress(0, Math.max(1, number - 1), 0, HEADINGS.size() - 1));
    }

    private void write(Row row, Finding finding, Optional<String> mirror) {
        Place place = finding.place();
        Cell severity = row.createCell(0);
        severity.setCellValue(finding.severity().text());
        severity.setCellStyle(styles.cell(Optional.of(finding.severity()), false, false));
        text(row, 1, finding.machine().map(Object::toString).orElse(""));
        text(row, 2, place.file());
        text(row, 3, place.sheet());
        place.row().ifPresent(number -> {
            Cell cell = row.createCell(4);
            cell.setCellValue(number);
            cell.setCellStyle(styles.cell(Optional.empty(), false, false));
        });
        place.column().ifPresent(number -> text(row, 5, Place.letters(number)));
        text(row, 6, place.header());
        text(row, 7, finding.message());
        text(row, 8, finding.seen());
        text(row, 9, finding.expected());
        text(row, 10, finding.remedy());
        text(row, 11, finding.code());
        if (mirror.isPresent() && place.row().isPresent()) {
            Hyperlink link = book.getCreationHelper().createHyperlink(HyperlinkType.DOCUMENT);
            link.setAddress("'%s'!%s%d".formatted(mirror.get().replace("'", "''"),
                    Place.letters(place.column().orElse(1)), place.row().getAsInt()));
            row.getCell(4).setHyperlink(link);
        }
    }

    private void text(Row row, int column, String text) {
        if (!text.isEmpty()) {
            PrintPages.makeRoom(row, text, WIDTHS.get(column));
            SafeCells.text(row.createCell(column), text, null);
            row.getCell(column).setCellStyle(!SafeCells.looksLikeFormula(text)
                    ? styles.wrapped() : styles.cell(Optional.empty(), false, SafeCells.looksLikeFormula(text)));
        }
    }
}
