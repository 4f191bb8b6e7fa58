package slotledger.rules.internal.rdram;

import java.util.List;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.rules.spi.Placed;

/**
 * Which sockets are read at once: the banks the document names, else the sockets at the same position of channels that
 * run together, as 16-bit RIMMs do on a board with two channels. A 32-bit RIMM is a pair by itself.
 */
final class RimmBanks {

    /** The bank of a socket that is read alone. */
    static final int ALONE = -1;

    private RimmBanks() {
    }

    /** Index of the bank of a slot, 0 for the one filled first. */
    static int of(Board board, Slot slot) {
        List<Bank> banks = board.banks().list();
        for (int i = 0; i < banks.size(); i++) {
            if (banks.get(i).slots().contains(slot.label())) {
                return i;
            }
        }
        return banks.isEmpty() && board.channels().size() > 1 ? slot.position() - 1 : ALONE;
    }

    /** Whether any socket of the board is read together with another. */
    static boolean arePairs(Board board) {
        return !board.banks().isEmpty() || board.channels().size() > 1;
    }

    /** Whether two modules are read together. */
    static boolean same(Board board, Placed one, Placed other) {
        int bank = of(board, one.slot());
        return bank != ALONE && bank == of(board, other.slot())
                && (!board.banks().isEmpty() || one.processor() == other.processor());
    }

    /** What the document calls the bank; where it names none, its place in the order. */
    static String name(Board board, int bank) {
        return board.banks().isEmpty() ? Integer.toString(bank) : board.banks().list().get(bank).name();
    }
}
