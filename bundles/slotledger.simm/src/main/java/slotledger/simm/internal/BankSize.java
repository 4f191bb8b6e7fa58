package slotledger.simm.internal;

import java.util.OptionalInt;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A bank has as many modules as the width of the bus asks for, unless the document says otherwise. */
@Component(service = MemoryRule.class)
@RuleId("simm-bank-size")
public final class BankSize extends SimmRule {

    public BankSize() {
        super(new RulePage(
                "simm-bank-size",
                "Modules a bank = data bits of the bus / data bits of a module; where the document names the banks, "
                        + "they decide.",
                BANK_TEXT,
                "The manual names the banks, or the processor tells the bus: 16 bits for 286, 386SX and 68000, 32 for "
                        + "386DX, 486 and 68020 to 68040, 64 for Pentium and Pentium Pro. A 30-pin SIMM has 8 data "
                        + "bits, a 72-pin SIMM 32.",
                "Compare the board file with the manual. Some Pentium boards read half a bank, with one 72-pin SIMM; "
                        + "some 386 and 486 boards interleave and want twice as many.",
                "A 486 reads 32 bits: 32 / 8 = 4 SIMMs of 30 pins, or 32 / 32 = 1 of 72 pins. A Pentium reads 64: "
                        + "64 / 8 = 8, or 64 / 32 = 2."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Board board = situation.board();
        if (!isUsed(situation)) {
            return;
        }
        if (!board.banks().isEmpty()) {
            named(situation, collector);
            return;
        }
        BankPlan plan = BankPlan.of(situation);
        if (plan.isKnown()) {
            collector.report(Weight.PASSES, () -> Statement.of(
                            "The bus of %d bits asks for %s a bank.".formatted(board.banks().busBits().getAsInt(),
                                    modules(plan.size())))
                    .by(board.sourceOf(BoardFact.BANKS)));
        } else {
            collector.report(Weight.UNKNOWN, () -> unknown(board, plan));
        }
    }

    private static void named(Situation situation, Collector collector) {
        Board board = situation.board();
        boolean odd = false;
        boolean compared = false;
        for (Bank bank : situation.banks()) {
            int expected = expected(situation, bank);
            int has = bank.slots().size();
            compared |= expected > 0;
            if (expected > 0 && has != expected && has != 2 * expected && 2 * has != expected) {
                odd = true;
                collector.report(Weight.CAUTION, () -> Statement.of(
                                "Bank %s has %s; the bus of %d bits asks for %d.".formatted(bank.name(),
                                        sockets(has), board.banks().busBits().getAsInt(), expected))
                        .in(bank.slots())
                        .by(board.sourceOf(BoardFact.BANKS)));
            }
        }
        if (!odd) {
            boolean byBus = compared;
            collector.report(Weight.PASSES, () -> Statement.of(byBus ? compared(situation)
                            : "The document names the banks.")
                    .by(board.sourceOf(BoardFact.BANKS)));
        }
    }

    /** Modules the bus asks for; 0 where bus or modules are unknown. */
    private static int expected(Situation situation, Bank bank) {
        Board board = situation.board();
        if (board.banks().busBits().isEmpty()) {
            return 0;
        }
        for (int i = 0; i < board.slots().size(); i++) {
            if (situation.takes(i).isPresent() && bank.slots().contains(board.slots().get(i).label())) {
                OptionalInt bits = BankPlan.moduleBits(situation.takes(i).get());
                return bits.isEmpty() ? 0 : BankPlan.size(board.banks().busBits().getAsInt(), bits.getAsInt());
            }
        }
        return 0;
    }

    private static String compared(Situation situation) {
        Board board = situation.board();
        int bus = board.banks().busBits().getAsInt();
        for (Bank bank : situation.banks()) {
            int expected = expected(situation, bank);
            int has = bank.slots().size();
            if (expected > 0 && has != expected) {
                return "The bus of %d bits asks for %s a bank; the document names banks of %d (%s), and it decides."
                        .formatted(bus, modules(expected), has,
                                has < expected ? "half of it is read at a time" : "two banks are interleaved");
            }
        }
        return "The document's banks have as many sockets as the bus of %d bits asks for.".formatted(bus);
    }

    private static Statement unknown(Board board, BankPlan plan) {
        String sentence = board.banks().busBits().isEmpty()
                ? "Neither the banks nor the width of the bus are known."
                : plan.size() == 0
                        ? "The sockets take modules of different widths, and no document says which make a bank."
                        : "The bus of %d bits asks for %s a bank, but no document says which sockets make one."
                                .formatted(board.banks().busBits().getAsInt(), modules(plan.size()));
        return Statement.of(sentence).missing(MissingFact.BOARD_FACT).by(board.sourceOf(BoardFact.BANKS));
    }

    static String modules(int count) {
        return count == 1 ? "1 module" : count + " modules";
    }

    private static String sockets(int count) {
        return count == 1 ? "1 socket" : count + " sockets";
    }
}
