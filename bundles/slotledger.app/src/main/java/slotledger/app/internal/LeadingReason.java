package slotledger.app.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

/**
 * Which of several equally heavy reasons a person should read first: what no other module or socket would change
 * before what one would. A module of a wrong generation has a wrong voltage too; the generation says it all.
 */
final class LeadingReason {

    /** Ids of rules; reasons of others come after them, in the order of the verdict. */
    static final List<String> FIRST = List.of("family", "unread-slot", "absent-processor", "dead-connector",
            "generation", "form", "buffering", "ecc", "voltage", "largest-module", "smallest-module", "chip-width",
            "chip-size", "module-ranks", "grade", "slot-described", "soldered");

    private LeadingReason() {
    }

    /** Empty where everything passes. */
    static Optional<Reason> of(Verdict verdict) {
        if (verdict.weight() == Weight.PASSES) {
            return Optional.empty();
        }
        return verdict.reasons(verdict.weight()).stream().min(Comparator.comparingInt(LeadingReason::rank));
    }

    private static int rank(Reason reason) {
        int rank = FIRST.indexOf(reason.rule());
        return rank < 0 ? FIRST.size() : rank;
    }
}
