package slotledger.rules.internal.ddr5;

import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Buffering;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A DDR5 DIMM socket takes unbuffered or registered modules, never both. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-notch")
public final class KeyedSocket extends ModuleRule {

    public KeyedSocket() {
        super(new RulePage(
                "ddr5-notch",
                "Unbuffered and registered DDR5 DIMMs have their notches at different places and other supply "
                        + "voltages: a socket takes one of the two.",
                Source.of(Ground.MEMORY),
                "Hold the module over the socket: the notch must meet the key. The label says U for unbuffered and R "
                        + "for registered (PC5-4800B-R); a registered one has a square chip in the middle.",
                "Choose modules of the buffering that the board's manual names. Never press a module past the key.",
                "A 32 GB DDR5 RDIMM has 288 contacts like the UDIMM of a desktop. Its notch lies elsewhere and it "
                        + "is fed 12 V instead of 5 V: it doesn't go in. In DDR4 the same pair goes in and doesn't "
                        + "start."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR5);
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        Set<Buffering> bufferings = module.way().bufferings();
        if (bufferings.isEmpty() || !module.way().forms().contains(Form.DIMM)
                || module.kind().form().isEmpty() || module.kind().form().get() != Form.DIMM) {
            return SILENT;
        }
        boolean plain = bufferings.contains(Buffering.UNBUFFERED);
        if (plain && bufferings.size() > 1) {
            return UNKNOWN;
        }
        Optional<Buffering> has = ModuleFacts.buffering(module.kind());
        return has.isEmpty() ? SILENT : plain == (has.get() == Buffering.UNBUFFERED) ? PASSES : BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        if (weight == Weight.UNKNOWN) {
            return Statement.of(("The document allows unbuffered and registered DDR5 modules for slot %s, but no "
                            + "socket takes both.").formatted(module.label()))
                    .in(module)
                    .by(situation.board().sourceOf(BoardFact.BUFFERING))
                    .missing(MissingFact.BOARD_FACT);
        }
        boolean plain = module.way().bufferings().contains(Buffering.UNBUFFERED);
        return Statement.of(("%s does not go in: the socket is keyed for %s DDR5 modules, the notch of the %s one lies "
                        + "elsewhere.").formatted(module, plain ? "unbuffered" : "registered",
                                plain ? "registered" : "unbuffered"))
                .in(module);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("The notches of all modules fit their sockets.");
    }
}
