package slotledger.rules.internal.family;

import java.util.List;
import java.util.Set;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/**
 * There are rules for the family of the board. No component like the others: which families have rules is known only
 * where all rules come together.
 */
public final class FamilyKnown {

    public static final RulePage PAGE = new RulePage(
            "family",
            "A board is judged only where there are rules for its family of memory.",
            Source.of(Ground.PRACTICE),
            "See which family the board takes: its manual names it.",
            "Plan this machine by hand with the board's manual.",
            "A board of 1996 takes 72-pin SIMMs of the EDO family. Without rules for this family no population of it "
                    + "is called allowed or forbidden.");

    private FamilyKnown() {
    }

    /**
     * Reports a board of which no generation has rules, and modules in sockets for a generation that has none.
     *
     * @param lawful generations some rule names
     * @return whether any generation of the board has rules
     */
    public static boolean judge(Situation situation, Set<Generation> lawful, Collector collector) {
        boolean some = false;
        boolean all = true;
        for (Generation generation : situation.generations()) {
            boolean has = lawful.contains(generation);
            some |= has;
            all &= has;
        }
        if (!some || !all && usesOther(situation, lawful)) {
            collector.report(Weight.UNKNOWN, () -> Statement.of("There are no rules for this family (%s)."
                            .formatted(String.join(", ", without(situation, lawful))))
                    .missing(MissingFact.FAMILY));
        }
        return some;
    }

    private static boolean usesOther(Situation situation, Set<Generation> lawful) {
        for (Placed module : situation.described()) {
            if (!lawful.contains(module.way().generation())) {
                return true;
            }
        }
        return false;
    }

    private static List<String> without(Situation situation, Set<Generation> lawful) {
        return situation.generations().stream()
                .filter(generation -> !lawful.contains(generation))
                .map(Generation::text)
                .toList();
    }
}
