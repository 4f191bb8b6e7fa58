package slotledger.intake.internal.report;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.apache.poi.ss.usermodel.BorderStyle;
import org.apache.poi.ss.usermodel.CellStyle;
import org.apache.poi.ss.usermodel.FillPatternType;
import org.apache.poi.ss.usermodel.Font;
import org.apache.poi.ss.usermodel.IndexedColors;
import org.apache.poi.ss.usermodel.VerticalAlignment;
import org.apache.poi.ss.usermodel.Workbook;
import slotledger.model.finding.Severity;

/** The few styles of our workbooks, each made once. */
public final class BookStyles {

    private final Workbook book;
    private final Map<List<Object>, CellStyle> styles = new HashMap<>();

    public BookStyles(Workbook book) {
        this.book = book;
    }

    /** A cell that may have a finding; a text that looks like a formula is marked as text. */
    CellStyle cell(Optional<Severity> severity, boolean date, boolean quoted) {
        return styles.computeIfAbsent(List.of(severity, date, quoted), key -> {
            CellStyle style = book.createCellStyle();
            style.setVerticalAlignment(VerticalAlignment.TOP);
            severity.ifPresent(known -> {
                style.setFillForegroundColor(colour(known).getIndex());
                style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            });
            if (date) {
                style.setDataFormat(book.createDataFormat().getFormat("yyyy-mm-dd"));
            }
            style.setQuotePrefixed(quoted);
            return style;
        });
    }

    private static IndexedColors colour(Severity severity) {
        return switch (severity) {
            case ERROR -> IndexedColors.ROSE;
            case WARNING -> IndexedColors.LIGHT_YELLOW;
            case NOTE -> IndexedColors.PALE_BLUE;
        };
    }

    public CellStyle heading() {
        return styles.computeIfAbsent(List.of("heading"), key -> {
            CellStyle style = book.createCellStyle();
            Font bold = book.createFont();
            bold.setBold(true);
            style.setFont(bold);
            style.setWrapText(true);
            style.setVerticalAlignment(VerticalAlignment.TOP);
            style.setFillForegroundColor(IndexedColors.GREY_25_PERCENT.getIndex());
            style.setFillPattern(FillPatternType.SOLID_FOREGROUND);
            style.setBorderBottom(BorderStyle.THIN);
            return style;
        });
    }

    public CellStyle wrapped() {
        return styles.computeIfAbsent(List.of("wrapped"), key -> {
            CellStyle style = book.createCellStyle();
            style.setWrapText(true);
            style.setVerticalAlignment(VerticalAlignment.TOP);
            return style;
        });
    }

    public CellStyle italic() {
        return styles.computeIfAbsent(List.of("italic"), key -> {
            CellStyle style = book.createCellStyle();
            Font italic = book.createFont();
            italic.setItalic(true);
            style.setFont(italic);
            return style;
        });
    }
}
