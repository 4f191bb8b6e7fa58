package slotledger.catalog;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;

/** The format of board files: its JSON Schema, and a file to copy and fill in. */
public final class BoardFormat {

    private BoardFormat() {
    }

    /** The JSON Schema (draft 2020-12) of a board file; editors can check and complete with it. */
    public static String schema() {
        return resource("board.schema.json");
    }

    /** A board file in YAML with every field and a comment beside it. */
    public static String template() {
        return resource("board-template.yaml");
    }

    private static String resource(String name) {
        try (InputStream stream = BoardFormat.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("The resource %s must be in the catalog bundle.".formatted(name));
            }
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
