package slotledger.rules.internal.lowpower;

import java.util.EnumSet;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleRule;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A DDR5 CAMM2 and an LPCAMM2 module are mounted differently. */
@Component(service = MemoryRule.class)
@RuleId("camm2-mounting")
public final class CammMounting extends ModuleRule {

    public CammMounting() {
        super(new RulePage(
                "camm2-mounting",
                "A CAMM2 module holds DDR5, an LPCAMM2 module LPDDR5 or LPDDR5X; the two are screwed down differently "
                        + "so that neither goes where the other belongs.",
                Source.document(
                        "JEDEC press release on JESD318, 2023-12-05",
                        "one connector design, different pinouts, intentional differences in mounting"),
                "Read the label: DDR5 or PC5 on CAMM2, LPDDR5 or LPDDR5X on LPCAMM2. Compare the screw holes of module "
                        + "and board before taking the old module out.",
                "Order the module by the name that the board's manual uses.",
                "A notebook takes 32 GB LPDDR5X on LPCAMM2. A 32 GB DDR5 CAMM2 module has the same kind of contacts "
                        + "and 128 data bits too, but its screw holes don't meet and its pinout differs."));
    }

    @Override
    public Set<Generation> families() {
        return EnumSet.of(Generation.DDR5, Generation.LPDDR5, Generation.LPDDR5X);
    }

    @Override
    protected Optional<Weight> weigh(Placed module) {
        Optional<Form> form = module.kind().form();
        Set<Form> forms = module.way().forms();
        if (form.isEmpty() || !Camm.is(form.get()) || !Camm.isAny(forms)) {
            return SILENT;
        }
        return forms.contains(form.get()) && agrees(form.get(), module.kind().generation()) ? PASSES : BLOCKS;
    }

    private static boolean agrees(Form form, Optional<Generation> generation) {
        return generation.isEmpty() || (form == Form.CAMM2) == (generation.get() == Generation.DDR5);
    }

    @Override
    protected Statement explain(Placed module, Weight weight, Situation situation) {
        Form form = module.kind().form().orElseThrow();
        String sentence = module.way().forms().contains(form)
                ? "%s can't be: %s on %s is not made.".formatted(module,
                        module.kind().generation().orElseThrow().text(), form.text())
                : "%s is a %s; the site is drilled for %s, and the two are mounted differently.".formatted(module,
                        form.text(), form == Form.CAMM2 ? Form.LPCAMM2.text() : Form.CAMM2.text());
        return Statement.of(sentence).in(module);
    }

    @Override
    protected Statement pass(Situation situation) {
        return Statement.of("Every compression-attached module is of the kind its site is drilled for.");
    }
}
