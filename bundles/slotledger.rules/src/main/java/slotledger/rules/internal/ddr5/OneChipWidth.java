package slotledger.rules.internal.ddr5;

import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardForm;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A DDR5 server holds modules with chips of one width. */
@Component(service = MemoryRule.class)
@RuleId("ddr5-chip-widths")
public final class OneChipWidth extends Rule {

    public OneChipWidth() {
        super(new RulePage(
                "ddr5-chip-widths",
                "A server with DDR5 modules never mixes x4 and x8 chips.",
                Source.document(
                        "Lenovo ThinkSystem SR630 V3 memory guide; PowerEdge DDR5 manuals",
                        "general rules of installation"),
                "Read the organisation on the labels: 1Rx4 has x4 chips, 1Rx8 x8 chips.",
                "Use modules with chips of one width.",
                "Eight 32 GB modules 1Rx4 and eight of 2Rx8 have the same capacity, but x4 and x8 chips: not "
                        + "together."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.DDR5);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (situation.board().form() != BoardForm.SERVER) {
            return;
        }
        ChipWidth first = null;
        for (Placed module : situation.described()) {
            Optional<ChipWidth> width = ModuleFacts.chipWidth(module.kind());
            if (width.isPresent() && first != null && width.get() != first) {
                ChipWidth one = first;
                collector.report(Weight.UNKNOWN, () -> Statement.of(
                                ("%s and %s chips are mixed; makers' guides forbid it, this board's document "
                                        + "doesn't say.")
                                        .formatted(one.text(), width.get().text()))
                        .in(situation.filled())
                        .missing(MissingFact.BOARD_FACT));
                return;
            }
            first = width.orElse(first);
        }
    }
}
