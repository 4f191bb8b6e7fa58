package slotledger.rules.internal.server;

import java.util.List;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.kit.Stacks;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Modules of stacked chips (3DS) are not mixed with plain ones; each family has its own document for that. */
public abstract class OneStacking extends Rule {

    protected OneStacking(RulePage page) {
        super(page);
    }

    @Override
    public final void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        if (modules.isEmpty() || !Servers.concerns(situation)) {
            return;
        }
        boolean stacked = false;
        boolean plain = false;
        boolean unknown = false;
        boolean unlike = false;
        for (int i = 0; i < modules.size(); i++) {
            boolean surelyStacked = Stacks.least(modules.get(i).kind()) > 1;
            boolean surelyPlain = !surelyStacked && Stacks.most(modules.get(i).kind()) == 1;
            stacked |= surelyStacked;
            plain |= surelyPlain;
            unknown |= !surelyStacked && !surelyPlain;
            unlike |= !modules.get(i).kind().equals(modules.get(0).kind());
        }
        if (stacked && plain) {
            collector.report(Weight.BLOCKS, () -> Statement.of(
                            "Modules of stacked and of plain chips are mixed (%s).".formatted(text(modules)))
                    .in(Slots.labels(modules)));
        } else if (unknown && unlike) {
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            "It is not known of all modules whether their chips are stacked (%s), and the two kinds "
                                    .formatted(text(modules)) + "don't run together.")
                    .in(Slots.labels(modules))
                    .missing(MissingFact.STACK));
        } else if (stacked) {
            collector.report(Weight.PASSES, () -> Statement.of("All modules have stacked chips."));
        }
    }

    private static String text(List<Placed> modules) {
        return Slots.by(modules, module -> {
            int least = Stacks.least(module.kind());
            int most = Stacks.most(module.kind());
            return most == 1 ? "plain chips" : least == most ? least + " dies stacked"
                    : least > 1 ? least + " or more dies stacked" : "unknown chips";
        });
    }
}
