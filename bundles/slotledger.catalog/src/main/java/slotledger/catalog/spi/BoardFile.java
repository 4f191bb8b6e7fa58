package slotledger.catalog.spi;

import java.util.Objects;

/**
 * One board file, not yet understood.
 *
 * @param name how findings call it: a file name with its folder or jar
 * @param text YAML, see {@link slotledger.catalog.BoardFormat}
 */
public record BoardFile(String name, String text) {

    public BoardFile {
        Objects.requireNonNull(text, "text");
        if (name.isBlank()) {
            throw new IllegalArgumentException("The name of a board file must not be blank.");
        }
    }
}
