package slotledger.rules.internal.kind;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.module.Form;
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

/** The mechanical form of a module is one the slot takes. */
@Component(service = MemoryRule.class)
@RuleId("form")
public final class FormFits extends ModuleRule {

    public FormFits() {
        super(new RulePage(
                "form",
                "A module has the mechanical form the slot is made for.",
                Source.document("JEDEC JESD21-C", "section 4, one outline for each form; lengths from memory"),
                "Measure it: a 30-pin SIMM is about 89 mm long, a 72-pin SIMM 108 mm, a DIMM or RIMM 133 mm, a "
                        + "SO-DIMM 68 mm. A CAMM2 or LPCAMM2 is a plate 78 mm wide that is held by screws.",
                "Choose a module of a form that the slot takes. Adapters are not planned with.",
                "A notebook takes SO-DIMMs. A DDR4 DIMM with 288 contacts is 133 mm long and does not go into its "
                        + "260-contact slot for 68 mm."));
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        Optional<Form> form = module.kind().form();
        return form.isEmpty() ? UNKNOWN : module.way().forms().contains(form.get()) ? PASSES : BLOCKS;
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        String wanted = text(module);
        String sentence = module.kind().form().isEmpty()
                ? "%s is of unknown form; the slot takes %s.".formatted(module, wanted)
                : "%s is a %s; the slot takes %s.".formatted(module, module.kind().form().get().text(), wanted);
        return Statement.of(sentence).in(module).by(situation.board().sourceOf(BoardFact.FORM))
                .missing(MissingFact.FORM);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("All modules have the form the slots take (%s)."
                        .formatted(text(situation.described().get(0))))
                .by(situation.board().sourceOf(BoardFact.FORM));
    }

    private static String text(Placed module) {
        List<String> forms = module.way().forms().stream().sorted().map(Form::text).toList();
        return String.join(" or ", forms);
    }
}
