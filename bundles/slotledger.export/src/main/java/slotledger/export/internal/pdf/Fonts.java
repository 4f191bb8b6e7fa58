package slotledger.export.internal.pdf;

import com.lowagie.text.Font;
import com.lowagie.text.pdf.BaseFont;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import org.librepdf.openpdf.fonts.Liberation;
import slotledger.export.internal.text.Texts;

/** The fonts of a document, embedded in it: Latin, Greek, Cyrillic and Hebrew letters. */
final class Fonts {

    private static final int WHITE_SQUARE = 0x25A1;

    private final BaseFont regular = load("LiberationSans-Regular.ttf");
    private final BaseFont bold = load("LiberationSans-Bold.ttf");

    Font regular(float size) {
        return new Font(regular, size);
    }

    Font bold(float size) {
        return new Font(bold, size);
    }

    BaseFont base() {
        return regular;
    }

    BaseFont boldBase() {
        return bold;
    }

    /** One printable line; a square stands for each character the font lacks. */
    String printable(String text) {
        StringBuilder printable = new StringBuilder(text.length());
        Texts.line(text).codePoints()
                .map(point -> point < 0x10000 && regular.charExists(point) ? point : WHITE_SQUARE)
                .forEach(printable::appendCodePoint);
        return printable.toString();
    }

    private static BaseFont load(String name) {
        try (InputStream in = Liberation.class.getResourceAsStream("/liberation/" + name)) {
            return BaseFont.createFont(name, BaseFont.IDENTITY_H, BaseFont.EMBEDDED, BaseFont.NOT_CACHED,
                    in.readAllBytes(), null);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
