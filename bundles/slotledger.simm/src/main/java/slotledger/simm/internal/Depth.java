package slotledger.simm.internal;

import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.family.Families;
import slotledger.model.family.Family;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.ModuleKind;

/**
 * Words of a module, as its label counts them: 4x36 is 4 M words of 32 data bits and 4 for parity, so 16 MB.
 *
 * @param words    how many
 * @param dataBits of each word
 */
record Depth(long words, int dataBits) {

    private static final long KIBI = 1024;

    /** Empty where the family is unknown, or the capacity is no whole number of words. */
    static Optional<Depth> of(ModuleKind kind) {
        if (kind.generation().isEmpty() || kind.form().isEmpty()) {
            return Optional.empty();
        }
        OptionalInt bits = Families.dataBits(kind.generation().get(), kind.form().get());
        long all = kind.capacity().kibibytes() * KIBI * Byte.SIZE;
        return bits.isEmpty() || all % bits.getAsInt() != 0
                ? Optional.empty()
                : Optional.of(new Depth(all / bits.getAsInt(), bits.getAsInt()));
    }

    /** Rows and columns are addressed in powers of two; the address lines of a SIMM are shared by both. */
    boolean isPowerOfTwo() {
        return Long.bitCount(words) == 1;
    }

    /** "4M x 36", "256K x 8". */
    String text(ModuleKind kind) {
        int check = kind.errorCheck().filter(known -> known != ErrorCheck.NONE)
                .flatMap(known -> Families.of(kind).map(Family::checkBits))
                .filter(bits -> !bits.isEmpty())
                .map(bits -> bits.get(0))
                .orElse(0);
        String depth = words % (KIBI * KIBI) == 0 ? words / (KIBI * KIBI) + "M"
                : words % KIBI == 0 ? words / KIBI + "K" : Long.toString(words);
        return depth + " x " + (dataBits + check);
    }
}
