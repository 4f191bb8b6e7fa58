package slotledger.rules.internal.ddr3;

import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Voltage;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A small DDR3 board may supply 1.35 V only. */
@Component(service = MemoryRule.class)
@RuleId("ddr3-low-voltage")
public final class LowVoltageUnsaid extends ModuleRule {

    private static final int LOW = 1350;

    public LowVoltageUnsaid() {
        super(new RulePage(
                "ddr3-low-voltage",
                "Notebooks and small desktops with low-power processors supply DDR3 SO-DIMMs with 1.35 V only and do "
                        + "not start with modules for 1.5 V.",
                new Source(Ground.MEMORY, "low-power 4th generation and all 6th generation Core boards with DDR3L", "",
                        Optional.empty()),
                "Read the labels of the module and of the one that is in the machine: PC3L means 1.35 V, plain PC3 "
                        + "1.5 V. A slot marked DDR3L or 1.35 V wants PC3L.",
                "Choose a PC3L module: it works in slots of 1.35 V and in slots of 1.5 V.",
                "A notebook of 2015 supplies 1.35 V. A PC3-12800 module for 1.5 V has the same 204 contacts and the "
                        + "same notch, goes in, and the notebook stays dark; PC3L-12800 works."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR3);
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (module.way().generation() != Generation.DDR3 || !module.way().voltages().isEmpty()
                || module.kind().form().filter(Form.SO_DIMM::equals).isEmpty()) {
            return SILENT;
        }
        boolean lower = false;
        for (Voltage each : ModuleFacts.voltages(module.kind())) {
            if (each.millivolts() == LOW) {
                return PASSES;
            }
            lower |= each.millivolts() < LOW;
        }
        return lower ? SILENT : CAUTION;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        return Statement.of("%s %s; no document says whether the slot supplies more than 1.35 V.".formatted(module,
                        module.kind().voltages().isEmpty() ? "may need 1.5 V" : "needs 1.5 V"))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.VOLTAGE));
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("All modules work at 1.35 V, whatever the slots supply.");
    }
}
