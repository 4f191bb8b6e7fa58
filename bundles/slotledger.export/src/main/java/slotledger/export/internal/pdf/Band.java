package slotledger.export.internal.pdf;

import com.lowagie.text.pdf.PdfContentByte;

/** The pattern of a channel: slots of one channel have the same. */
final class Band {

    private static final int PATTERNS = 8;

    private Band() {
    }

    static void paint(PdfContentByte canvas, int channel, float x, float y, float width, float height) {
        canvas.saveState();
        canvas.rectangle(x, y, width, height);
        canvas.clip();
        canvas.newPath();
        canvas.setLineWidth(0.8f);
        switch (Math.floorMod(channel, PATTERNS)) {
            case 0 -> canvas.newPath();
            case 1 -> ground(canvas, 0.35f, x, y, width, height);
            case 2 -> strokes(canvas, x, y, width, height, height, 3);
            case 3 -> strokes(canvas, x, y, width, height, 0, 3);
            case 4 -> strokes(canvas, x, y, width, height, -height, 3);
            case 5 -> {
                for (float line = y + 1; line < y + height; line += 2) {
                    canvas.moveTo(x, line);
                    canvas.lineTo(x + width, line);
                }
                canvas.stroke();
            }
            case 6 -> {
                strokes(canvas, x, y, width, height, height, 4);
                strokes(canvas, x, y, width, height, -height, 4);
            }
            default -> ground(canvas, 0.75f, x, y, width, height);
        }
        canvas.restoreState();
        canvas.saveState();
        canvas.setLineWidth(0.5f);
        canvas.rectangle(x, y, width, height);
        canvas.stroke();
        canvas.restoreState();
    }

    private static void ground(PdfContentByte canvas, float grey, float x, float y, float width, float height) {
        canvas.setGrayFill(grey);
        canvas.rectangle(x, y, width, height);
        canvas.fill();
    }

    private static void strokes(
            PdfContentByte canvas, float x, float y, float width, float height, float slant, float step) {
        for (float at = x - height; at < x + width + height; at += step) {
            canvas.moveTo(at, y);
            canvas.lineTo(at + slant, y + height);
        }
        canvas.stroke();
    }
}
