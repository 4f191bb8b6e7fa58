package slotledger.rules.internal.sdr;

import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Buffering;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A registered SDR module only goes where a document says so. */
@Component(service = MemoryRule.class)
@RuleId("sdr-registered")
public final class RegisteredWhereSaid extends ModuleRule {

    public RegisteredWhereSaid() {
        super(new RulePage(
                "sdr-registered",
                "A registered SDR module works only where the board's document says so.",
                new Source(Ground.MEMORY, "JEDEC JESD21-C, 168-pin DIMM: one notch codes buffering, one the voltage",
                        "", Optional.empty()),
                "Look for two or three wide flat chips in the middle of the module: those are registers. The notch "
                        + "nearer the end is for buffered (EDO, 5 V) or unbuffered (SDRAM, 3.3 V) modules.",
                "Choose an unbuffered module, or find the word registered in the board's document and add it to the "
                        + "board file.",
                "A 256 MB module of 18 chips and 3 registers is for servers. A desktop of 1999 whose manual doesn't "
                        + "say registered starts with the same 256 MB of 16 chips without registers."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.SDR);
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (module.way().generation() != Generation.SDR || !module.way().bufferings().isEmpty()) {
            return SILENT;
        }
        Optional<Buffering> buffering = module.kind().buffering();
        return buffering.isEmpty() || buffering.get() == Buffering.UNBUFFERED ? SILENT : UNKNOWN;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        return Statement.of("%s is %s; no document says that the board works with such modules."
                        .formatted(module, module.kind().buffering().orElseThrow().text()))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.BUFFERING))
                .missing(MissingFact.BOARD_FACT);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("No module has registers that no document speaks of.");
    }
}
