package slotledger.export.internal.pdf;

import com.lowagie.text.pdf.BaseFont;
import com.lowagie.text.pdf.PdfContentByte;
import com.lowagie.text.pdf.PdfTemplate;
import java.util.List;

/**
 * Draws groups of horizontal bars. A number stands behind each bar and a word before it, so that nothing hangs on its
 * shade.
 */
final class BarsPainter {

    private static final float NAME = 130;
    private static final float WORD = 54;
    private static final float BAR = 9;
    private static final float GAP = 7;
    private static final float NUMBER = 30;
    private static final float TEXT = 7;
    private static final float[] SHADES = {0.82f, 0.6f, 0.2f};

    /**
     * Bars that belong together.
     *
     * @param name   of the group
     * @param counts one for each word
     */
    record Group(String name, List<Integer> counts) {
    }

    private final Fonts fonts;
    private final List<String> words;
    private final float width;

    BarsPainter(Fonts fonts, List<String> words, float width) {
        this.fonts = fonts;
        this.words = words;
        this.width = width;
    }

    PdfTemplate paint(PdfContentByte canvas, List<Group> groups) {
        float each = words.size() * BAR + GAP;
        PdfTemplate picture = canvas.createTemplate(width, each * groups.size());
        int most = Math.max(1, groups.stream().flatMap(group -> group.counts().stream()).mapToInt(Integer::intValue)
                .max().orElse(1));
        float scale = (width - NAME - WORD - NUMBER) / most;
        float top = each * groups.size();
        for (Group group : groups) {
            text(picture, fonts.boldBase(), fonts.printable(shortened(group.name())), 0, top - BAR + 2);
            for (int i = 0; i < words.size(); i++) {
                float y = top - (i + 1) * BAR;
                float length = group.counts().get(i) * scale;
                text(picture, fonts.base(), words.get(i), NAME, y + 2);
                picture.setGrayFill(SHADES[i % SHADES.length]);
                picture.rectangle(NAME + WORD, y + 1, length, BAR - 2);
                picture.fill();
                picture.setGrayFill(0);
                text(picture, fonts.base(), Integer.toString(group.counts().get(i)), NAME + WORD + length + 3, y + 2);
            }
            top -= each;
        }
        return picture;
    }

    private static String shortened(String name) {
        return name.length() > 30 ? name.substring(0, 29) + "\u2026" : name;
    }

    private static void text(PdfTemplate picture, BaseFont font, String text, float x, float y) {
        picture.beginText();
        picture.setFontAndSize(font, TEXT);
        picture.setTextMatrix(x, y);
        picture.showText(text);
        picture.endText();
    }
}
