package slotledger.rules.internal.lowpower;

import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.board.Takes;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
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

/** Compression-attached modules fill their site, and nothing stands beside them. */
@Component(service = MemoryRule.class)
@RuleId("camm2-site")
public final class CammSite extends Rule {

    public CammSite() {
        super(new RulePage(
                "camm2-site",
                "One dual-channel module, or a whole stack of single-channel ones, fills the site of compression-"
                        + "attached memory; SO-DIMMs are not used beside it.",
                Source.document(
                        "JEDEC press release on JESD318, 2023-12-05",
                        "dual-channel, or two single-channel modules stacked at 2.85 and 7.5 mm; the rest is from "
                                + "memory"),
                "Count the screwed plates: one plate of 128 bits, or two above each other with a spacer between. The "
                        + "board's manual says which it takes.",
                "Exchange the module for a larger one: there is no place to add one. Fill a stack wholly, the lower "
                        + "module first, with the spacer that belongs to it.",
                "A notebook holds one LPCAMM2 module of 16 GB: 128 bits, two channels. For 32 GB it gets one of 32 "
                        + "GB, and the 16 GB module comes out. A second one of 16 GB has no place."));
    }

    @Override
    public Set<Generation> families() {
        return EnumSet.of(Generation.DDR5, Generation.LPDDR5, Generation.LPDDR5X);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Placed> modules = situation.described();
        int dual = 0;
        int single = 0;
        int others = 0;
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            Optional<Form> form = module.kind().form();
            if (form.isPresent() && !Camm.is(form.get()) && !Camm.isAny(module.way().forms())) {
                others++;
            } else if (Camm.isAny(module.way().forms())) {
                boolean wide = situation.board().channels().get(module.channel()).spans() > 1;
                dual += wide ? 1 : 0;
                single += wide ? 0 : 1;
            }
        }
        if (dual + single == 0) {
            return;
        }
        int stack = single == 0 ? 0 : singles(situation);
        if (others > 0) {
            report(collector, Weight.BLOCKS, situation, "Compression-attached modules and others are filled at once "
                    + "(%s); a board uses one of the two.");
        } else if (dual > 0 && single > 0) {
            report(collector, Weight.BLOCKS, situation, "A dual-channel module and single-channel ones are filled at "
                    + "once (%s); they need the same place.");
        } else if (single < stack && situation.matchingRows().isEmpty()) {
            int filled = single;
            collector.report(Weight.UNKNOWN, () -> Statement.of(
                            ("%d of %d single-channel modules of the stack are in; no document says whether the "
                                    + "machine starts so.")
                                    .formatted(filled, stack))
                    .in(Slots.labels(modules))
                    .missing(MissingFact.BOARD_FACT));
        } else {
            boolean one = dual > 0;
            collector.report(Weight.PASSES, () -> Statement.of(one
                    ? "A dual-channel module fills the site (%s).".formatted(Slots.byCapacity(modules))
                    : "The stack of single-channel modules is whole (%s).".formatted(Slots.byCapacity(modules))));
        }
    }

    private static void report(Collector collector, Weight weight, Situation situation, String sentence) {
        collector.report(weight, () -> Statement.of(sentence.formatted(text(situation)))
                .in(Slots.labels(situation.described())));
    }

    private static String text(Situation situation) {
        return Slots.by(situation.described(), module -> module.kind().form().map(Form::text).orElse("unknown form"));
    }

    /** Sockets for single-channel modules. */
    private static int singles(Situation situation) {
        Board board = situation.board();
        int count = 0;
        for (int i = 0; i < board.slots().size(); i++) {
            Slot slot = board.slots().get(i);
            if (slot.isSocket() && board.channel(slot.channel()).spans() == 1 && takesCamm(board, slot)) {
                count++;
            }
        }
        return count;
    }

    private static boolean takesCamm(Board board, Slot slot) {
        for (int i = 0; i < board.takes().size(); i++) {
            Takes takes = board.takes().get(i);
            if (takes.holdsFor(slot.label()) && Camm.isAny(takes.forms())) {
                return true;
            }
        }
        return false;
    }
}
