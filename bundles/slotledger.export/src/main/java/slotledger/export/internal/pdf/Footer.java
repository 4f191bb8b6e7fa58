package slotledger.export.internal.pdf;

import com.lowagie.text.Document;
import com.lowagie.text.Element;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfPageEventHelper;
import com.lowagie.text.pdf.PdfTemplate;
import com.lowagie.text.pdf.PdfWriter;
import slotledger.export.internal.text.Texts;

/** The foot of every page: whose sheet it is, of which project, which page of how many. */
final class Footer extends PdfPageEventHelper {

    private static final float SIZE = 7.5f;
    private static final int NAME_LIMIT = 28;
    private static final int TITLE_LIMIT = 56;

    private final Fonts fonts;
    private final String title;
    private String name = "";
    private int page;
    private PdfTemplate total;

    Footer(Fonts fonts, String title) {
        this.fonts = fonts;
        this.title = title;
    }

    /** The pages from here on belong to another part. */
    void begin(PdfWriter writer, String part) {
        finish();
        name = part;
        page = 0;
        total = writer.getDirectContent().createTemplate(30, SIZE * 1.5f);
    }

    @Override
    public void onEndPage(PdfWriter writer, Document document) {
        if (total == null) {
            begin(writer, name);
        }
        page++;
        PdfContentByte canvas = writer.getDirectContent();
        float y = document.bottom() - 18;
        canvas.saveState();
        canvas.setLineWidth(0.5f);
        canvas.moveTo(document.left(), y + SIZE + 3);
        canvas.lineTo(document.right(), y + SIZE + 3);
        canvas.stroke();
        canvas.restoreState();
        canvas.beginText();
        canvas.setFontAndSize(fonts.boldBase(), SIZE);
        canvas.showTextAligned(Element.ALIGN_LEFT, Texts.shortened(name, NAME_LIMIT), document.left(), y, 0);
        canvas.setFontAndSize(fonts.base(), SIZE);
        canvas.showTextAligned(Element.ALIGN_CENTER, Texts.shortened(title, TITLE_LIMIT),
                (document.left() + document.right()) / 2, y, 0);
        canvas.showTextAligned(Element.ALIGN_RIGHT, "page " + page + " of ", document.right() - 14, y, 0);
        canvas.endText();
        canvas.addTemplate(total, document.right() - 14, y);
    }

    @Override
    public void onCloseDocument(PdfWriter writer, Document document) {
        finish();
    }

    private void finish() {
        if (total != null) {
            total.beginText();
            total.setFontAndSize(fonts.base(), SIZE);
            total.showText(Integer.toString(page));
            total.endText();
            total = null;
        }
    }
}
