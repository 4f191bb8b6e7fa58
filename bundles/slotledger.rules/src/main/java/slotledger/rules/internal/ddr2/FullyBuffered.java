package slotledger.rules.internal.ddr2;

import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Buffering;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A fully buffered DIMM only goes into a slot made for it. */
@Component(service = MemoryRule.class)
@RuleId("ddr2-fully-buffered")
public final class FullyBuffered extends ModuleRule {

    public FullyBuffered() {
        super(new RulePage(
                "ddr2-fully-buffered",
                "A fully buffered DIMM speaks serially to the board and goes only into a slot made for it, though it "
                        + "has the chips and the 240 contacts of DDR2.",
                new Source(Ground.MEMORY, "JEDEC JESD205 and MO-256", "", Optional.empty()),
                "Look for one square chip in the middle under a metal plate over the whole face. The label says F "
                        + "behind the rate, as in PC2-5300F. The notch is after pin 68; that of DDR2 is after pin 64.",
                "Choose an unbuffered or registered DDR2 module as the board's document says.",
                "A server takes registered DDR2. A 2 GB module PC2-5300F has 240 contacts too, but its notch is 4 "
                        + "contacts farther on: it does not go in."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR2);
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (module.way().generation() != Generation.DDR2 || !module.way().bufferings().isEmpty()) {
            return SILENT;
        }
        Optional<Buffering> buffering = module.kind().buffering();
        return buffering.isEmpty() ? SILENT : buffering.get() == Buffering.FULLY_BUFFERED ? BLOCKS : PASSES;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        return Statement.of("%s is fully buffered; a board for such modules says so, and this one's document doesn't."
                        .formatted(module))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.BUFFERING));
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("No module is fully buffered.");
    }
}
