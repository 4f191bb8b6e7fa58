package slotledger.rules.internal.kind;

import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Source;
import slotledger.model.unit.Voltage;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Volts;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** There is one voltage at which all modules work. */
@Component(service = MemoryRule.class)
@RuleId("one-voltage")
public final class OneVoltage extends Rule {

    public OneVoltage() {
        super(new RulePage(
                "one-voltage",
                "All slots supply the same voltage, so there must be one at which every module works.",
                Source.document("System x3550 M4 Installation and Service Guide", "page 46"),
                "Read the labels: PC3L works at 1.35 V and 1.5 V, plain PC3 at 1.5 V only.",
                "Choose modules that work at one voltage the board supplies.",
                "A PC3L module (1.35 V or 1.5 V) and a PC3 module (1.5 V) run together at 1.5 V on a board that "
                        + "supplies "
                        + "both; on a board that supplies 1.35 V only they don't."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (situation.described().size() < 2) {
            return;
        }
        boolean open = false;
        boolean anyAlone = true;
        for (Placed module : situation.described()) {
            open |= ModuleFacts.mayWorkAtMore(module.kind());
            if (ModuleFacts.voltages(module.kind()).isEmpty()) {
                return;
            }
            anyAlone &= module.way().voltages().isEmpty()
                    || ModuleFacts.anySame(module.way().voltages(), ModuleFacts.voltages(module.kind()));
        }
        Voltage common = common(situation);
        if (common != null) {
            collector.report(Weight.PASSES, () -> Statement.of("All modules work at %s.".formatted(common))
                    .by(situation.board().sourceOf(BoardFact.VOLTAGE)));
        } else if (open) {
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            "It is not known whether all modules work at one voltage.")
                    .in(situation.filled())
                    .missing(MissingFact.VOLTAGE));
        } else if (anyAlone) {
            collector.report(Weight.BLOCKS, () -> Statement.of(
                            "There is no voltage at which all modules work that the slots supply.")
                    .in(situation.filled()));
        }
    }

    private static Voltage common(Situation situation) {
        for (Placed module : situation.described()) {
            for (Voltage each : ModuleFacts.voltages(module.kind())) {
                if (Volts.suitsAll(each, situation)) {
                    return each;
                }
            }
        }
        return null;
    }
}
