package slotledger.model.plan;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.SlotContent;
import slotledger.model.unit.Money;

/**
 * Modules nobody needs after the work.
 *
 * @param content what it is
 * @param count   how many
 * @param origin  where they were
 * @param to      shelf or disposal
 * @param worth   what as many would cost now at the cheapest offer: an estimate, not what somebody would pay for them;
 *                empty where nobody offers the kind
 */
public record Leftover(SlotContent content, int count, Origin origin, Station to, Optional<Money> worth) {

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
        Objects.requireNonNull(worth, "worth");
        if (count < 1) {
            throw new IllegalArgumentException("The count (%d) of a leftover must be at least 1.".formatted(count));
        }
    }

    /** Nobody looked yet what they are worth. */
    public Leftover(SlotContent content, int count, Origin origin, Station to) {
        this(content, count, origin, to, Optional.empty());
    }

    public Leftover withWorth(Optional<Money> found) {
        return new Leftover(content, count, origin, to, found);
    }
}
