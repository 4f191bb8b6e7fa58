package slotledger.rules.internal.lowpower;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Low-power memory is soldered, or on an LPCAMM2 module. */
@Component(service = MemoryRule.class)
@RuleId("lowpower-soldered")
public final class SolderedOrLpcamm extends Rule {

    public SolderedOrLpcamm() {
        super(new RulePage(
                "lowpower-soldered",
                "LPDDR3, LPDDR4 and LPDDR4X come only soldered to the board; LPDDR5 and LPDDR5X come soldered or on an "
                        + "LPCAMM2 module.",
                Source.document(
                        "JEDEC press release on JESD318, 2023-12-05",
                        "LPDDR5/5X modules for compression attachment; that none exist for older LPDDR is from memory"),
                "Look for a socket: memory without one is soldered, a row of flat black chips beside the processor. "
                        + "An LPCAMM2 module is a plate held by screws. The firmware may list soldered memory as "
                        + "modules; the board's manual says which it is.",
                "Nothing can be added to soldered memory or exchanged in it. Give the machine a task for which its "
                        + "memory is enough, or replace the machine.",
                "A notebook has 2 x 4 GB LPDDR4X soldered: it has 8 GB for life. An order of 8 GB for it would be "
                        + "money lost, though its firmware lists two \"modules\"."));
    }

    @Override
    public Set<Generation> families() {
        return LowPower.GENERATIONS;
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        boolean objected = false;
        boolean soldered = false;
        List<Placed> modules = situation.modules();
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            if (module.isSoldered()) {
                soldered |= LowPower.is(module.kind());
                continue;
            }
            Weight weight = weigh(module);
            if (weight != Weight.PASSES) {
                objected = true;
                collector.report(weight, () -> explain(module, weight));
            }
        }
        if (!objected && soldered) {
            collector.report(Weight.PASSES, () -> pass(situation));
        }
    }

    private static Weight weigh(Placed module) {
        Optional<Generation> generation = module.kind().generation();
        Optional<Form> form = module.kind().form();
        if (generation.isEmpty() || !LowPower.is(module.kind())) {
            return Weight.PASSES;
        }
        if (!LowPower.ON_MODULES.contains(generation.get())) {
            return Weight.BLOCKS;
        }
        return form.isEmpty() ? Weight.UNKNOWN : form.get() == Form.LPCAMM2 ? Weight.PASSES : Weight.BLOCKS;
    }

    private static Statement explain(Placed module, Weight weight) {
        String generation = module.kind().generation().orElseThrow().text();
        if (weight == Weight.UNKNOWN) {
            return Statement.of("%s is %s of unknown form; only LPCAMM2 goes into a socket."
                            .formatted(module, generation))
                    .in(module)
                    .missing(MissingFact.FORM);
        }
        return Statement.of(LowPower.ON_MODULES.contains(module.kind().generation().orElseThrow())
                        ? "%s is %s as %s; only LPCAMM2 modules hold it in a socket.".formatted(module, generation,
                                module.kind().form().orElseThrow().text())
                        : "%s can't be: %s comes only soldered.".formatted(module, generation))
                .in(module);
    }

    private static Statement pass(Situation situation) {
        List<Placed> soldered = situation.modules().stream().filter(Placed::isSoldered).toList();
        Capacity sum = Capacity.NONE;
        for (Placed each : soldered) {
            sum = sum.plus(each.kind().capacity());
        }
        return Statement.of("%s of low-power memory are soldered (%s): they stay as they are.".formatted(sum,
                        Slots.byCapacity(soldered)))
                .in(Slots.labels(soldered));
    }
}
