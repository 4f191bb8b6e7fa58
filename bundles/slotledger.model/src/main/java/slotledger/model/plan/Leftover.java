package slotledger.model.plan;

import java.util.Objects;
import slotledger.model.machine.SlotContent;

/**
 * Modules nobody needs after the work.
 *
 * @param content what it is
 * @param count   how many
 * @param origin  where they were
 * @param to      shelf or disposal
 */
public record Leftover(SlotContent content, int count, Origin origin, Station to) {

    /** Where a leftover was. */
    public enum Origin {
        /** It stays on the shelf. */
        SHELF("stays on the shelf"),
        /** It was pulled out of a machine. */
        PULLED("pulled"),
        /** It was bought as a spare or because of a pack size. */
        BOUGHT("bought");

        private final String text;

        Origin(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    public Leftover {
        Objects.requireNonNull(content, "content");
        Objects.requireNonNull(origin, "origin");
        Objects.requireNonNull(to, "to");
        if (count < 1) {
            throw new IllegalArgumentException("The count (%d) of a leftover must be at least 1.".formatted(count));
        }
    }
}
