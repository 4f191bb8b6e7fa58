package slotledger.export.internal.pdf;

import com.lowagie.text.Image;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import slotledger.export.internal.code.TagCode;

/** A tag's code as a drawing on paper. */
final class CodeImage {

    private static final float SQUARE = 92;
    private static final float BAR_WIDTH = 1;
    private static final float BAR_HEIGHT = 34;
    private static final float MOST = 190;

    private CodeImage() {
    }

    static Image of(TagCode code, PdfContentByte canvas) {
        int across = code.bits().getWidth() + 2 * code.quiet();
        float unit = code.isBars() ? Math.min(BAR_WIDTH, MOST / across) : SQUARE / across;
        float height = code.isBars() ? BAR_HEIGHT : SQUARE;
        PdfTemplate drawing = canvas.createTemplate(across * unit, height);
        for (int y = 0; y < code.bits().getHeight(); y++) {
            int run = 0;
            for (int x = 0; x <= code.bits().getWidth(); x++) {
                if (x < code.bits().getWidth() && code.bits().get(x, y)) {
                    run++;
                } else if (run > 0) {
                    float left = (x - run + code.quiet()) * unit;
                    float bottom = code.isBars() ? 0 : height - (y + 1 + code.quiet()) * unit;
                    drawing.rectangle(left, bottom, run * unit, code.isBars() ? height : unit);
                    run = 0;
                }
            }
        }
        drawing.fill();
        return Image.getInstance(drawing);
    }
}
