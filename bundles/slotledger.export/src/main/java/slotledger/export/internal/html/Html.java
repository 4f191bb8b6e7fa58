package slotledger.export.internal.html;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import slotledger.export.internal.job.Line;
import slotledger.export.internal.text.Texts;

/** A page that needs nothing from outside itself and runs nothing but its own script. */
final class Html {

    private static final String STYLE = resource("sheet.css");
    private static final String SCRIPT = resource("sheet.js");
    private static final String SCRIPT_HASH = sha256(SCRIPT);

    private final StringBuilder out = new StringBuilder();

    /**
     * @param title of the page
     * @param key   under which a browser keeps what is ticked
     */
    Html(String title, String key) {
        out.append("<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\">\n");
        out.append("<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\">\n");
        out.append("<meta http-equiv=\"Content-Security-Policy\" content=\"default-src 'none'; "
                + "style-src 'unsafe-inline'; script-src 'sha256-").append(SCRIPT_HASH).append("'\">\n");
        out.append("<title>").append(escape(title)).append("</title>\n<style>\n").append(STYLE)
                .append("</style>\n</head>\n");
        out.append("<body data-sheet=\"").append(escape(key)).append("\">\n");
    }

    /** Adds markup of our own. */
    Html raw(String markup) {
        out.append(markup);
        return this;
    }

    /** Adds text; whatever is in it stays text. */
    Html text(String text) {
        out.append(escape(text));
        return this;
    }

    /**
     * Adds a name of a user's thing; its writing direction does not touch what is around it, and marks in it that would
     * make it look like another name are left out.
     */
    Html name(String text) {
        out.append("<bdi>").append(escape(Texts.line(text))).append("</bdi>");
        return this;
    }

    Html line(Line line) {
        for (Line.Part part : line.parts()) {
            if (part.strong()) {
                raw("<b>").name(part.text()).raw("</b>");
            } else {
                text(part.text());
            }
        }
        return this;
    }

    /** An element with nothing but text in it. */
    Html element(String tag, String text) {
        return raw("<" + tag + ">").text(text).raw("</" + tag.split(" ")[0] + ">\n");
    }

    String done() {
        return out + "<script>" + SCRIPT + "</script>\n</body>\n</html>\n";
    }

    static String escape(String text) {
        StringBuilder escaped = new StringBuilder(text.length());
        Texts.xml(text).codePoints().forEach(point -> {
            switch (point) {
                case '&' -> escaped.append("&amp;");
                case '<' -> escaped.append("&lt;");
                case '>' -> escaped.append("&gt;");
                case '"' -> escaped.append("&quot;");
                case '\'' -> escaped.append("&#39;");
                default -> escaped.appendCodePoint(point >= 0x7F && point <= 0x9F ? 0xFFFD : point);
            }
        });
        return escaped.toString();
    }

    private static String resource(String name) {
        try (InputStream in = Html.class.getResourceAsStream("/slotledger/export/internal/html/" + name)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static String sha256(String text) {
        try {
            byte[] hash = MessageDigest.getInstance("SHA-256").digest(text.getBytes(StandardCharsets.UTF_8));
            return Base64.getEncoder().encodeToString(hash);
        } catch (NoSuchAlgorithmException e) {
            throw new IllegalStateException("SHA-256 must be there on every Java platform.", e);
        }
    }
}
