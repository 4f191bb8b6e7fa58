package slotledger.export.internal.pdf;

import com.lowagie.text.Chunk;
import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.Font;
import com.lowagie.text.PageSize;
import com.lowagie.text.Paragraph;
import com.lowagie.text.Phrase;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import com.lowagie.text.pdf.PdfWriter;
import java.io.OutputStream;
import java.util.List;
import slotledger.export.internal.job.Line;

/** An A4 document under way, with the parts that sheets are made of. */
final class Paper implements AutoCloseable {

    static final float TEXT = 8.5f;
    static final float SMALL = 7;
    static final float WIDTH = PageSize.A4.getWidth() - 72;

    private static final float MARGIN = 36;
    private static final float BOTTOM = 44;
    private static final float LEADING = 1.22f;

    private final Fonts fonts = new Fonts();
    /** Points. */
    private static final float ROOM_BELOW_HEADING = 64;

    private final Document document = new Document(PageSize.A4, MARGIN, MARGIN, MARGIN, BOTTOM);
    private final PdfWriter writer;
    private final Footer footer;

    Paper(OutputStream out, String title) {
        writer = PdfWriter.getInstance(document, out);
        writer.setCloseStream(false);
        writer.setViewerPreferences(PdfWriter.PageModeUseOutlines);
        footer = new Footer(fonts, fonts.printable(title));
        writer.setPageEvent(footer);
        document.addTitle(fonts.printable(title));
        document.addCreator("Slotledger");
        document.open();
    }

    Fonts fonts() {
        return fonts;
    }

    PdfWriter writer() {
        return writer;
    }

    /** Begins a part on a new page, whose pages are counted from 1. */
    void begin(String name) {
        document.newPage();
        footer.begin(writer, fonts.printable(name));
    }

    void add(Element element) {
        document.add(element);
    }

    /** Goes on a new page where there is no room for the heading and the first lines below it. */
    void heading(String text, float size) {
        if (writer.getVerticalPosition(true) - document.bottom() < ROOM_BELOW_HEADING) {
            document.newPage();
        }
        Paragraph paragraph = new Paragraph(new Phrase(fonts.printable(text), fonts.bold(size)));
        paragraph.setSpacingBefore(size * 0.5f);
        paragraph.setSpacingAfter(3);
        paragraph.setLeading(size * LEADING);
        document.add(paragraph);
    }

    void paragraph(String text) {
        Paragraph paragraph = new Paragraph(new Phrase(fonts.printable(text), fonts.regular(TEXT)));
        paragraph.setLeading(TEXT * LEADING);
        paragraph.setSpacingAfter(3);
        document.add(paragraph);
    }

    /** A table over the whole width; widths are shares. */
    static PdfPTable table(float... widths) {
        PdfPTable table = new PdfPTable(widths);
        table.setWidthPercentage(100);
        table.setSpacingBefore(2);
        table.setSpacingAfter(2);
        return table;
    }

    PdfPCell cell(Phrase phrase, int border) {
        PdfPCell cell = new PdfPCell(phrase);
        // Names in other writing directions keep their letters in order.
        cell.setRunDirection(PdfWriter.RUN_DIRECTION_LTR);
        cell.setBorder(border);
        cell.setBorderWidth(0.5f);
        cell.setLeading(0, LEADING);
        cell.setPaddingTop(1.5f);
        cell.setPaddingBottom(3);
        cell.setPaddingLeft(3);
        cell.setPaddingRight(3);
        return cell;
    }

    PdfPCell cell(String text, Font font, int border) {
        return cell(new Phrase(fonts.printable(text), font), border);
    }

    PdfPCell cell(String text) {
        return cell(text, fonts.regular(TEXT), Rectangle.BOTTOM);
    }

    PdfPCell plain(Line line) {
        return cell(phrase(line), Rectangle.NO_BORDER);
    }

    Phrase phrase(Line line) {
        Phrase phrase = new Phrase();
        phrase.setFont(fonts.regular(TEXT));
        for (Line.Part part : line.parts()) {
            String text = part.strong() ? fonts.printable(part.text()) : kept(part.text());
            phrase.add(new Chunk(text, part.strong() ? fonts.bold(TEXT) : fonts.regular(TEXT)));
        }
        return phrase;
    }

    /** Our own words keep the blanks at their ends, which part them from names. */
    private String kept(String text) {
        String clean = fonts.printable(text);
        return (text.startsWith(" ") ? " " : "") + clean + (text.endsWith(" ") && !clean.isEmpty() ? " " : "");
    }

    /** A table with a header that is repeated on every page. */
    PdfPTable list(List<String> headings, float... widths) {
        PdfPTable table = table(widths);
        for (String heading : headings) {
            PdfPCell cell = cell(heading, fonts.bold(TEXT), Rectangle.BOTTOM);
            cell.setBorderWidth(1.2f);
            cell.setVerticalAlignment(Element.ALIGN_BOTTOM);
            table.addCell(cell);
        }
        table.setHeaderRows(1);
        return table;
    }

    /** A box to tick. */
    PdfPCell box() {
        PdfPCell cell = new PdfPCell(new Phrase("\u25A1", fonts.regular(14)));
        cell.setBorder(Rectangle.NO_BORDER);
        cell.setPaddingTop(-3);
        cell.setPaddingLeft(0);
        cell.setPaddingBottom(2);
        return cell;
    }

    @Override
    public void close() {
        document.close();
    }
}
