package slotledger.rules.internal.kind;

import java.util.Optional;
import java.util.OptionalInt;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.family.Families;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
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

/** The generation of a module is the one the slot takes. */
@Component(service = MemoryRule.class)
@RuleId("generation")
public final class GenerationFits extends ModuleRule {

    public GenerationFits() {
        super(new RulePage(
                "generation",
                "A module works only in a slot of its own generation.",
                Source.document(
                        "JEDEC JESD79, JESD79-2, JESD79-3, JESD79-4, JESD79-5",
                        "one standard a generation from DDR on; pin counts and notches from memory"),
                "Read the label: PC66 to PC133 is SDR, PC600 to PC1200 RDRAM, PC1600 to PC3200 DDR, then PC2, PC3 or "
                        + "PC3L, PC4, PC5 for DDR2 to DDR5. Don't go by the number of pins: DDR2 and DDR3 DIMMs both "
                        + "have 240, DDR4 and DDR5 DIMMs both 288, DDR DIMMs and RDRAM both 184, DDR and DDR2 "
                        + "SO-DIMMs both 200. Hold the notch against the key of the slot.",
                "Choose a module of the generation that the board takes. Never force a module past the notch.",
                "A board takes DDR3 DIMMs. A DDR2 DIMM also has 240 pins, but its notch is after pin 64 and that of "
                        + "DDR3 after pin 48: it does not go in."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        if (ModuleFacts.isPageMode(module.way().generation())) {
            return SILENT;
        }
        Optional<Generation> generation = module.kind().generation();
        return generation.isEmpty() ? UNKNOWN : generation.get() == module.way().generation() ? PASSES : BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        String wanted = module.way().generation().text();
        String sentence = module.kind().generation().isEmpty()
                ? "%s is of unknown generation; the slot takes %s.".formatted(module, wanted)
                : "%s is %s; the slot takes %s%s.".formatted(module, module.kind().generation().get().text(), wanted,
                        samePins(module));
        return Statement.of(sentence).in(module).by(situation.board().sourceOf(BoardFact.TAKES))
                .missing(MissingFact.GENERATION);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("All modules are %s, as the slots take."
                        .formatted(situation.described().get(0).way().generation().text()))
                .by(situation.board().sourceOf(BoardFact.TAKES));
    }

    private static String samePins(Placed module) {
        Generation has = module.kind().generation().orElseThrow();
        Generation takes = module.way().generation();
        Optional<Form> form = module.kind().form();
        OptionalInt pins = form.isEmpty() ? OptionalInt.empty() : Families.pins(has, form.get());
        return pins.isEmpty() || !pins.equals(Families.pins(takes, form.get()))
                ? ""
                : ": the same %d pins, but the notch is elsewhere".formatted(pins.getAsInt());
    }
}
