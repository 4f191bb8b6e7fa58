package slotledger.rules.internal.rdram;

import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Slot;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A bank of RIMM sockets holds modules in all of them, or in none. */
@Component(service = MemoryRule.class)
@RuleId("rimm-banks-whole")
public final class BanksWhole extends RdramRule {

    public BanksWhole() {
        super(new RulePage(
                "rimm-banks-whole",
                "On a board with two channels RIMMs come in pairs: a bank holds modules in all its sockets or "
                        + "continuity modules in all of them, and the first bank holds modules.",
                Source.document("Intel Desktop Board D850GB manual", "section 1.5.3: bank 0 is filled first, bank 1 "
                        + "takes two modules or two continuity modules"),
                "The manual names the sockets of each bank. A 232-pin RIMM carries both channels and is a pair by "
                        + "itself.",
                "Fill the first bank first, and each bank with as many modules as it has sockets; where the document "
                        + "has pairs in a bank, with whole pairs.",
                "Bank 0 is RIMM1 and RIMM2, bank 1 is RIMM3 and RIMM4. 2 modules go into RIMM1 and RIMM2 and 2 "
                        + "continuity modules into RIMM3 and RIMM4; 3 modules are never right."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Board board = situation.board();
        if (!RimmBanks.arePairs(board) || situation.filled().isEmpty()) {
            return;
        }
        boolean objected = false;
        List<Slot> slots = board.slots();
        for (int i = 0; i < slots.size(); i++) {
            Slot slot = slots.get(i);
            if (!slot.isSocket() || situation.takes(i).isEmpty() || isFilled(situation, slot)
                    || !situation.isInstalled(i)) {
                continue;
            }
            int bank = RimmBanks.of(board, slot);
            if (bank == 0) {
                objected = true;
                collector.report(Weight.BLOCKS, () -> statement(situation, slot,
                        "Slot %s of the first bank (%s) holds no module.".formatted(
                                slot.label(), RimmBanks.name(board, 0))));
            } else if (bank != RimmBanks.ALONE && anyFilled(situation, bank, slot)) {
                objected = true;
                collector.report(Weight.BLOCKS, () -> statement(situation, slot,
                        "Slot %s holds no module, but another slot of its bank (%s) does.".formatted(
                                slot.label(), RimmBanks.name(board, bank))));
            }
        }
        if (!objected) {
            collector.report(Weight.PASSES, () -> Statement.of(
                            "Each bank holds modules in all its sockets or in none, and the first one does.")
                    .by(board.sourceOf(BoardFact.BANKS)));
        }
    }

    private static boolean isFilled(Situation situation, Slot slot) {
        return situation.filled().contains(slot.label());
    }

    private static boolean anyFilled(Situation situation, int bank, Slot empty) {
        List<Slot> slots = situation.board().slots();
        for (int i = 0; i < slots.size(); i++) {
            Slot slot = slots.get(i);
            if (slot != empty && slot.isSocket() && RimmBanks.of(situation.board(), slot) == bank
                    && isFilled(situation, slot)) {
                return true;
            }
        }
        return false;
    }

    private static Statement statement(Situation situation, Slot slot, String sentence) {
        return Statement.of(sentence).in(List.of(slot.label())).by(situation.board().sourceOf(BoardFact.BANKS));
    }
}
