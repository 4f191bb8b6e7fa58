package slotledger.rules.internal.rdram;

import java.util.OptionalInt;
import slotledger.model.module.ChipSize;
import slotledger.model.module.Form;
import slotledger.model.module.ModuleKind;

/**
 * Chips of a RIMM. Each is as wide as the channel and addressed alone, so capacity = chips x chip size: 4 x 128 Mbit =
 * 64 MB, 16 x 256 Mbit = 512 MB (Intel Desktop Board D850GB manual, table 5).
 */
final class RdramChips {

    /** Most chips of a channel (Abit CX6 manual). */
    static final int MOST_OF_CHANNEL = 32;

    private static final int KIB_PER_MBIT = 128;
    private static final int MOST_OF_MODULE = 16;
    private static final int SMALLEST_MBIT = 64;
    private static final int LARGEST_MBIT = 512;

    private RdramChips() {
    }

    /** Known where the chip size is, and the chips come out whole. */
    static OptionalInt of(ModuleKind kind) {
        if (kind.chipSize().isEmpty()) {
            return OptionalInt.empty();
        }
        long one = (long) dataMbit(kind.chipSize().get()) * KIB_PER_MBIT;
        long chips = kind.capacity().kibibytes() / one;
        return kind.capacity().kibibytes() % one == 0 && chips <= Integer.MAX_VALUE
                ? OptionalInt.of((int) chips)
                : OptionalInt.empty();
    }

    /** Chips with check bits are printed with them: of 144 Mbit, 128 hold data. */
    static int dataMbit(ChipSize size) {
        return size.mebibits() % 9 == 0 ? size.mebibits() / 9 * 8 : size.mebibits();
    }

    /** Most chips of a module: 16 on each channel it carries (D850GB manual, table 5; 32-bit RIMMs from memory). */
    static int most(ModuleKind kind) {
        return kind.form().filter(form -> form == Form.RIMM_232).isPresent() ? 2 * MOST_OF_MODULE : MOST_OF_MODULE;
    }

    /** Fewest chips there can be where their size isn't known: no RDRAM chip has more than 512 Mbit (from memory). */
    static int fewestPossible(ModuleKind kind) {
        return (int) Math.min(Integer.MAX_VALUE, chips(kind, LARGEST_MBIT));
    }

    /** Most chips there can be: no RDRAM chip is smaller than 64 Mbit (from memory). */
    static int mostPossible(ModuleKind kind) {
        return (int) Math.min(most(kind), chips(kind, SMALLEST_MBIT));
    }

    private static long chips(ModuleKind kind, int mbit) {
        long one = (long) mbit * KIB_PER_MBIT;
        return (kind.capacity().kibibytes() + one - 1) / one;
    }
}
