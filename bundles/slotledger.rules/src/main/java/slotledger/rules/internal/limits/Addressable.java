package slotledger.rules.internal.limits;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The modules together are no larger than the chipset addresses. */
@Component(service = MemoryRule.class)
@RuleId("addressable")
public final class Addressable extends Rule {

    public Addressable() {
        super(new RulePage(
                "addressable",
                "What is installed above the memory that the chipset addresses is not seen.",
                Source.of(Ground.PRACTICE),
                "The chipset's data sheet or the board's manual gives the largest memory it addresses; the firmware "
                        + "counts less than is installed.",
                "Plan no more than the chipset addresses; what is above helps nobody. The machine starts with it all "
                        + "the same, so that it only lowers; more than a board or processor is made for blocks.",
                "A notebook takes 2 x 2 GB, but its chipset addresses 3 GB: 4 GB are installed, 3 GB are "
                        + "seen and 1 GB is lost."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Optional<Capacity> most = situation.board().addressable();
        if (most.isEmpty()) {
            return;
        }
        boolean fits = most.get().atLeast(situation.total());
        collector.report(fits ? Weight.PASSES : Weight.LOWERS, () -> Statement.of(fits
                        ? "%s in all are within the %s the chipset addresses.".formatted(situation.total(), most.get())
                        : "%s are installed; the chipset addresses %s, so that %s are not seen.".formatted(
                                situation.total(), most.get(), situation.total().minus(most.get())))
                .by(situation.board().sourceOf(BoardFact.ADDRESSABLE)));
    }
}
