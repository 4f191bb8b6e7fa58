package slotledger.rules.internal.rdram;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Slot;
import slotledger.model.board.Takes;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** No RIMM socket is empty. */
@Component(service = MemoryRule.class)
@RuleId("rimm-sockets-filled")
public final class SocketsFilled extends RdramRule {

    public SocketsFilled() {
        super(new RulePage(
                "rimm-sockets-filled",
                "Every RIMM socket holds a module or a continuity module of its own form, for the channel runs through "
                        + "all its sockets.",
                Source.document("Abit CX6 manual", "memory: all memory expansion sockets must be occupied"),
                "Look into the machine: a continuity module is a RIMM without chips. The firmware can't see one. One "
                        + "for 184 pins only passes the signals on; one for 232 pins also ends the channel and carries "
                        + "small resistors (from memory).",
                "Put a continuity module of the right form into each empty socket; order one where none is in stock. "
                        + "Keep those that modules replace.",
                "A board has 4 sockets and 2 modules: it needs 2 continuity modules. When 2 more modules go in, both "
                        + "come out and are free for another machine."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Slot> slots = situation.board().slots();
        boolean any = false;
        boolean objected = false;
        for (int i = 0; i < slots.size(); i++) {
            Slot slot = slots.get(i);
            Optional<Takes> takes = situation.takes(i);
            if (takes.isEmpty() || !slot.isSocket() || !situation.isInstalled(i)) {
                continue;
            }
            any = true;
            SlotContent content = situation.setup().population().in(slot.label());
            if (content instanceof SlotContent.Empty && !mayBeEmpty(situation, slot)
                    || content instanceof SlotContent.Filled held && !fits(held.filler(), takes.get())) {
                objected = true;
                collector.report(Weight.BLOCKS, () -> objection(situation, slot, content, takes.get()));
            }
        }
        if (any && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of(
                    "Every socket holds a module or the right continuity module."));
        }
    }

    /** Where the document wants nothing in empty sockets, a bank of its own, but not the first, may be wholly empty. */
    private static boolean mayBeEmpty(Situation situation, Slot slot) {
        Board board = situation.board();
        List<Bank> banks = board.banks().list();
        if (board.fill().blank().isPresent()) {
            return false;
        }
        for (int i = 1; i < banks.size(); i++) {
            List<String> labels = banks.get(i).slots();
            if (labels.contains(slot.label()) && labels.size() > board.fill().setSize()) {
                return isEmpty(situation, labels);
            }
        }
        return false;
    }

    private static boolean isEmpty(Situation situation, List<String> labels) {
        for (int i = 0; i < labels.size(); i++) {
            if (!situation.setup().population().in(labels.get(i)).isEmpty()) {
                return false;
            }
        }
        return true;
    }

    private static boolean fits(Filler filler, Takes takes) {
        return switch (filler) {
            case CONTINUITY_184 -> takes.forms().contains(Form.RIMM_184);
            case CONTINUITY_232 -> takes.forms().contains(Form.RIMM_232);
            case AIR_BLANK -> false;
        };
    }

    private static Statement objection(Situation situation, Slot slot, SlotContent content, Takes takes) {
        String wanted = takes.forms().contains(Form.RIMM_232)
                ? Filler.CONTINUITY_232.text()
                : Filler.CONTINUITY_184.text();
        String sentence = content.isEmpty()
                ? "Slot %s is empty: the channel is broken there. It takes a module or a %s.".formatted(
                        slot.label(), wanted)
                : "Slot %s holds a %s; it takes a module or a %s.".formatted(slot.label(), content, wanted);
        return Statement.of(sentence).in(List.of(slot.label())).by(situation.board().sourceOf(BoardFact.FORM));
    }
}
