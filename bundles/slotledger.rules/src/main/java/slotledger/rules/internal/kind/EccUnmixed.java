package slotledger.rules.internal.kind;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.EccOutcome;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** One module without check bits turns ECC off for all. */
@Component(service = MemoryRule.class)
@RuleId("ecc-mixed")
public final class EccUnmixed extends Rule {

    public EccUnmixed() {
        super(new RulePage(
                "ecc-mixed",
                "ECC works only where every module carries it.",
                Source.document(
                        "Intel Desktop Board D850GB manual",
                        "section 1.5.3: ECC only if every module is ECC"),
                "Count the chips of a rank of every module: 9 x8 or 18 x4 mean ECC, 8 or 16 none (on DDR5 10 x8, 18 "
                        + "or 20 x4). The label says E or R for ECC.",
                "Give the machine ECC modules only, or accept that errors are not checked.",
                "A workstation that uses ECC holds 2 x 8 GB ECC. A third module without ECC makes 24 GB, all "
                        + "unchecked."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        int with = 0;
        int without = 0;
        int unknown = 0;
        for (Placed module : situation.described()) {
            if (module.way().ecc() != EccOutcome.USED || ModuleFacts.isPageMode(module.way().generation())) {
                continue;
            }
            Optional<Boolean> checkBits = ModuleFacts.checkBits(module.kind());
            if (checkBits.isEmpty()) {
                unknown++;
            } else if (checkBits.get()) {
                with++;
            } else {
                without++;
            }
        }
        if (with > 0 && without > 0) {
            int checked = with;
            collector.report(Weight.LOWERS, () -> Statement.of(
                            "%d of %d modules carry ECC, the others don't: errors are checked on none of them."
                                    .formatted(checked, situation.described().size()))
                    .in(plain(situation))
                    .by(situation.board().sourceOf(BoardFact.ECC)));
        } else if (with > 0 && unknown > 0) {
            collector.report(Weight.CAUTION, () -> Statement.of(
                            "It is not known whether all modules carry ECC; if one doesn't, errors are not checked.")
                    .by(situation.board().sourceOf(BoardFact.ECC)));
        } else if (with > 0) {
            collector.report(Weight.PASSES, () -> Statement.of("All modules carry ECC, and the board uses it.")
                    .by(situation.board().sourceOf(BoardFact.ECC)));
        }
    }

    private static List<String> plain(Situation situation) {
        List<String> labels = new ArrayList<>();
        for (Placed module : situation.described()) {
            if (!ModuleFacts.checkBits(module.kind()).orElse(true)) {
                labels.add(module.label());
            }
        }
        return labels;
    }
}
