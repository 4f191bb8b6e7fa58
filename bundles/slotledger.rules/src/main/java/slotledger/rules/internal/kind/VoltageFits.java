package slotledger.rules.internal.kind;

import java.util.Collection;
import java.util.Optional;
import java.util.TreeSet;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Source;
import slotledger.model.unit.Voltage;
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

/** A module works at a voltage the slot supplies. */
@Component(service = MemoryRule.class)
@RuleId("voltage")
public final class VoltageFits extends ModuleRule {

    public VoltageFits() {
        super(new RulePage(
                "voltage",
                "A module works at a voltage that the slot supplies.",
                Source.document("System x3550 M4 Installation and Service Guide",
                        "page 46: a label with L means 1.35 V specified, 1.5 V operable"),
                "Read the label: PC3L or DDR3L means 1.35 V and 1.5 V, plain PC3 or DDR3 means 1.5 V only. Other "
                        + "families have one voltage each: SIMMs 5 V, SDR 3.3 V, RDRAM and DDR 2.5 V, DDR2 1.8 V, "
                        + "DDR4 1.2 V, DDR5 1.1 V (from memory).",
                "Choose a module for the voltage that the slot supplies. A board for 1.5 V "
                        + "takes modules labelled PC3L too.",
                "A small desktop supplies 1.35 V only. A DDR3 module labelled PC3-12800 needs 1.5 V and is not "
                        + "allowed; "
                        + "one labelled PC3L-12800 is."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (module.way().voltages().isEmpty() || ModuleFacts.voltages(module.kind()).isEmpty()) {
            return SILENT;
        }
        if (ModuleFacts.anySame(module.way().voltages(), ModuleFacts.voltages(module.kind()))) {
            return PASSES;
        }
        return ModuleFacts.mayWorkAtMore(module.kind()) ? UNKNOWN : BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        String supplied = text(module.way().voltages());
        String sentence = weight == Weight.UNKNOWN
                ? "The slot supplies %s; it is not known whether %s works at less than 1.5 V."
                        .formatted(supplied, module.inSentence())
                : "%s works at %s; the slot supplies %s."
                        .formatted(module, text(ModuleFacts.voltages(module.kind())), supplied);
        return Statement.of(sentence).in(module).by(situation.board().sourceOf(BoardFact.VOLTAGE))
                .missing(MissingFact.VOLTAGE);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("Every module works at a voltage its slot supplies (%s)."
                        .formatted(text(situation.described().get(0).way().voltages())))
                .by(situation.board().sourceOf(BoardFact.VOLTAGE));
    }

    static String text(Collection<Voltage> voltages) {
        return String.join(" or ", new TreeSet<>(voltages).stream().map(Voltage::toString).toList());
    }
}
