package slotledger.app;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

/**
 * In which order a person should read the reasons of a verdict: worst first, and of equally heavy ones what no other
 * module or socket would change before what one would. A module of a wrong generation has a wrong voltage too; the
 * generation says it all.
 */
public final class ReadingOrder {

    /** Ids of rules; reasons of others come after them, in the order of the verdict. */
    static final List<String> FIRST = List.of("family", "unread-slot", "absent-processor", "dead-connector",
            "generation", "form", "buffering", "ecc", "voltage", "largest-module", "smallest-module", "chip-width",
            "chip-size", "module-ranks", "grade", "slot-described", "soldered");

    private ReadingOrder() {
    }

    public static List<Reason> of(Verdict verdict) {
        return verdict.reasons().stream()
                .sorted(Comparator.comparing(Reason::weight).reversed().thenComparing(ReadingOrder::rank))
                .toList();
    }

    /** The reason to read first; empty where everything passes. */
    public static Optional<Reason> first(Verdict verdict) {
        return of(verdict).stream().findFirst().filter(reason -> reason.weight() != Weight.PASSES);
    }

    private static int rank(Reason reason) {
        int rank = FIRST.indexOf(reason.rule());
        return rank < 0 ? FIRST.size() : rank;
    }
}
