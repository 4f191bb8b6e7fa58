package slotledger.rules.internal.rdram;

import java.util.List;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.rules.spi.Placed;

/**
 * Which sockets are read at once: the banks the document names, else the sockets at the same position of channels that
 * run together, as 16-bit RIMMs do on a board with two channels. A 32-bit RIMM is a pair by itself. A bank can be
 * larger than the sets it is filled in: HP's x4000 has banks of four sockets for one or two matched pairs each.
 */
final class RimmBanks {

    /** The bank of a socket that is read alone. */
    static final int ALONE = -1;

    private RimmBanks() {
    }

    /** Index of the bank of a slot, or of its set where a bank takes several; 0 for the one filled first. */
    static int of(Board board, Slot slot) {
        List<Bank> banks = board.banks().list();
        int before = 0;
        for (int i = 0; i < banks.size(); i++) {
            int place = banks.get(i).slots().indexOf(slot.label());
            int together = together(board, banks.get(i));
            if (place >= 0) {
                return before + place / together;
            }
            before += banks.get(i).slots().size() / together;
        }
        return banks.isEmpty() && board.channels().size() > 1 ? slot.position() - 1 : ALONE;
    }

    /** Sockets of a bank that hold modules together: all, or one set of those the document prints. */
    private static int together(Board board, Bank bank) {
        int all = bank.slots().size();
        int set = board.fill().setSize();
        return set > 1 && set < all && all % set == 0 ? set : all;
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

    /** What the document calls the bank, with the set where it takes several; unnamed, its place in the order. */
    static String name(Board board, int index) {
        int before = 0;
        for (Bank bank : board.banks().list()) {
            int together = together(board, bank);
            int sets = bank.slots().size() / together;
            if (index < before + sets) {
                int first = (index - before) * together;
                return sets == 1
                        ? bank.name()
                        : bank.name() + ": " + String.join(", ", bank.slots().subList(first, first + together));
            }
            before += sets;
        }
        return Integer.toString(index);
    }
}
