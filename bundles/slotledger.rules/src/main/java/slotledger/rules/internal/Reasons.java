package slotledger.rules.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.alike.LookAlikes;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Turns what rules report into reasons; below an objection stands what a module may have been taken for. */
final class Reasons {

    private final Situation situation;
    private final List<Reason> reasons = new ArrayList<>();

    Reasons(Situation situation) {
        this.situation = situation;
    }

    Collector of(RulePage page) {
        return (weight, statement) -> reasons.add(reason(page, weight, statement.get()));
    }

    List<Reason> worstFirst() {
        return reasons.stream()
                .sorted(Comparator.comparing(Reason::weight).reversed().thenComparing(Reason::rule))
                .toList();
    }

    private Reason reason(RulePage page, Weight weight, Statement words) {
        String remedy = words.remedy().orElse(switch (weight) {
            case PASSES -> "";
            case UNKNOWN -> words.missing().map(MissingFact::cheapestWay).orElse(page.howToTell());
            case CAUTION, LOWERS, BLOCKS -> page.whatToDo();
        });
        return new Reason(page.id(), weight, words.sentence(), words.slots(), words.source().orElse(page.source()),
                remedy, LookAlikes.below(page.id(), weight, words, situation),
                weight == Weight.UNKNOWN ? words.missing() : Optional.empty());
    }
}
