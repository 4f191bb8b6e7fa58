package slotledger.model.plan;

import java.util.List;
import java.util.Objects;
import slotledger.model.verdict.Reason;

/**
 * Why a machine is not on target.
 *
 * @param kind    what binds
 * @param message one sentence for people
 * @param freedBy what would change it, one sentence; may be empty
 * @param reasons reasons of the rules, where rules bind
 */
public record Obstacle(Kind kind, String message, String freedBy, List<Reason> reasons) {

    /** What binds. */
    public enum Kind {
        /** The board or its rules allow nothing better. */
        RULE("the board"),
        /** No offer and nothing owned would fit. */
        NO_MODULE("no module to be had"),
        /** Fitting modules are sold out or used for more urgent machines. */
        STOCK("stock"),
        /** The money does not reach. */
        BUDGET("budget"),
        /** A fact is missing. */
        MISSING_FACT("a missing fact"),
        /** The policy leaves the machine alone. */
        POLICY("policy");

        private final String text;

        Kind(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    public Obstacle {
        Objects.requireNonNull(kind, "kind");
        Objects.requireNonNull(freedBy, "freedBy");
        reasons = List.copyOf(reasons);
        if (message.isBlank()) {
            throw new IllegalArgumentException("An obstacle must say what it is.");
        }
    }
}
