package slotledger.simm.internal;

import java.util.List;
import java.util.OptionalInt;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.board.Takes;
import slotledger.model.family.Families;
import slotledger.model.module.Form;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.spi.Situation;

/**
 * Which bank each socket belongs to. The document's own banks decide. Where it names none, the width of the bus says
 * how many sockets make one, and the order of filling which ones; where there is only one bank no order is needed.
 */
final class BankPlan {

    /** A socket that belongs to no known bank. */
    static final int NONE = -1;

    private final Board board;
    private final List<Bank> banks;
    private final int[] bankOf;
    private final boolean known;
    private final boolean ordered;
    private final int size;

    private BankPlan(Situation situation, int[] bankOf, boolean known, boolean ordered, int size) {
        board = situation.board();
        banks = situation.banks();
        this.bankOf = bankOf;
        this.known = known;
        this.ordered = ordered;
        this.size = size;
    }

    static BankPlan of(Situation situation) {
        Board board = situation.board();
        int[] bankOf = new int[board.slots().size()];
        if (!board.banks().isEmpty()) {
            for (int i = 0; i < bankOf.length; i++) {
                bankOf[i] = named(situation.banks(), board.slots().get(i).label());
            }
            return new BankPlan(situation, bankOf, true, true, 0);
        }
        OptionalInt bits = moduleBits(situation);
        if (board.banks().busBits().isEmpty() || bits.isEmpty()) {
            return new BankPlan(situation, bankOf, false, false, 0);
        }
        int size = size(board.banks().busBits().getAsInt(), bits.getAsInt());
        return computed(situation, bankOf, size);
    }

    private static BankPlan computed(Situation situation, int[] bankOf, int size) {
        Board board = situation.board();
        List<String> order = situation.order();
        int sockets = 0;
        boolean orderNamesAll = true;
        for (int i = 0; i < bankOf.length; i++) {
            if (isSocket(situation, i)) {
                int place = order.indexOf(board.slots().get(i).label());
                orderNamesAll &= place >= 0;
                bankOf[i] = place / size;
                sockets++;
            } else {
                bankOf[i] = NONE;
            }
        }
        if (orderNamesAll) {
            return new BankPlan(situation, bankOf, sockets % size == 0, true, size);
        }
        int next = 0;
        for (int i = 0; i < bankOf.length; i++) {
            bankOf[i] = isSocket(situation, i) ? next++ / size : NONE;
        }
        return new BankPlan(situation, bankOf, size == 1 || sockets == size, sockets == size, size);
    }

    private static boolean isSocket(Situation situation, int slot) {
        return situation.board().slots().get(slot).isSocket() && situation.takes(slot).isPresent()
                && ModuleFacts.isPageMode(situation.takes(slot).get().generation());
    }

    private static int named(List<Bank> banks, String label) {
        for (int i = 0; i < banks.size(); i++) {
            if (banks.get(i).slots().contains(label)) {
                return i;
            }
        }
        return NONE;
    }

    /** Modules that together are as wide as the bus. */
    static int size(int busBits, int moduleBits) {
        return Math.max(1, busBits / moduleBits);
    }

    /** Data bits of the modules the sockets take; empty where the sockets differ or the family is unknown. */
    private static OptionalInt moduleBits(Situation situation) {
        OptionalInt bits = OptionalInt.empty();
        for (int i = 0; i < situation.board().slots().size(); i++) {
            if (isSocket(situation, i)) {
                OptionalInt more = moduleBits(situation.takes(i).orElseThrow());
                if (more.isEmpty() || bits.isPresent() && bits.getAsInt() != more.getAsInt()) {
                    return OptionalInt.empty();
                }
                bits = more;
            }
        }
        return bits;
    }

    /** Data bits of the modules that go in; empty where the forms differ in them. */
    static OptionalInt moduleBits(Takes takes) {
        OptionalInt bits = OptionalInt.empty();
        for (Form form : takes.forms()) {
            OptionalInt more = Families.dataBits(takes.generation(), form);
            if (more.isEmpty() || bits.isPresent() && bits.getAsInt() != more.getAsInt()) {
                return OptionalInt.empty();
            }
            bits = more;
        }
        return bits;
    }

    /** Whether it is known which sockets make a bank. */
    boolean isKnown() {
        return known;
    }

    /** Whether it is known which bank comes first. */
    boolean isOrdered() {
        return known && ordered;
    }

    /** Sockets a bank by the width of the bus; 0 where the document names the banks. */
    int size() {
        return size;
    }

    /** The bank of a slot by its index in the board's list; meaningful where the banks are known. */
    int of(int slot) {
        return bankOf[slot];
    }

    /** How many banks there are, empty ones among them. */
    int count() {
        int most = NONE;
        for (int bank : bankOf) {
            most = Math.max(most, bank);
        }
        return most + 1;
    }

    /** What the document calls the bank; where it names none, its place. */
    String name(int bank) {
        return banks.isEmpty() ? Integer.toString(bank) : banks.get(bank).name();
    }

    /** How many sockets of the bank hold a module, or something that could not be read. */
    int filled(int bank, Situation situation) {
        int count = 0;
        for (int i = 0; i < bankOf.length; i++) {
            Slot slot = board.slots().get(i);
            count += bankOf[i] == bank && slot.isSocket() && situation.filled().contains(slot.label()) ? 1 : 0;
        }
        return count;
    }

    /** How many sockets belong to any bank. */
    int sockets() {
        int count = 0;
        for (int bank : bankOf) {
            count += bank == NONE ? 0 : 1;
        }
        return count;
    }

    /** How many sockets the bank has. */
    int sockets(int bank) {
        int count = 0;
        for (int i = 0; i < bankOf.length; i++) {
            count += bankOf[i] == bank && board.slots().get(i).isSocket() ? 1 : 0;
        }
        return count;
    }

    /** Labels of the sockets of a bank; for sentences. */
    List<String> labels(int bank) {
        return board.slots().stream()
                .filter(slot -> slot.isSocket() && bankOf[board.slots().indexOf(slot)] == bank)
                .map(Slot::label)
                .toList();
    }
}
