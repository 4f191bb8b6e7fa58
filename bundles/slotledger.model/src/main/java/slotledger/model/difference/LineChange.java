package slotledger.model.difference;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.plan.Purchase;
import slotledger.model.trade.Offer;

/**
 * A purchase line that is not the same in both plans.
 *
 * @param before the line of the earlier plan; empty where it was added
 * @param after  the line of the later plan; empty where it was dropped
 */
public record LineChange(Optional<Purchase> before, Optional<Purchase> after) {

    /** What became of a line. */
    public enum Kind {
        ADDED("added"),
        DROPPED("dropped"),
        /** Another number of packs. */
        QUANTITY("other quantity"),
        /** As many packs at another price. */
        PRICE("other price");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    public LineChange {
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
        if (before.equals(after)) {
            throw new IllegalArgumentException("A changed purchase line must not be the same in both plans.");
        }
    }

    public Kind kind() {
        if (before.isEmpty() || after.isEmpty()) {
            return before.isEmpty() ? Kind.ADDED : Kind.DROPPED;
        }
        return before.get().packs() == after.get().packs() ? Kind.PRICE : Kind.QUANTITY;
    }

    /** The offer as the later plan knows it, or the earlier one where it is dropped. */
    public Offer offer() {
        return after.or(() -> before).orElseThrow().offer();
    }

    public int packsBefore() {
        return before.map(Purchase::packs).orElse(0);
    }

    public int packsAfter() {
        return after.map(Purchase::packs).orElse(0);
    }
}
