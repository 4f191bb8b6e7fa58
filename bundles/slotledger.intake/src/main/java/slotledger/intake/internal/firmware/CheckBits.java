package slotledger.intake.internal.firmware;

import java.util.Optional;
import slotledger.model.module.ErrorCheck;

/**
 * What the widths of a memory device say of check bits: DSP0134, section 7.18; DDR5 has two halves with 4 or 8 of them
 * each (JESD400-5).
 *
 * @param check empty where the widths don't go together or one is not told
 * @param lie   what is wrong with them
 */
record CheckBits(Optional<ErrorCheck> check, Optional<Lie> lie) {

    private static final CheckBits UNKNOWN = new CheckBits(Optional.empty(), Optional.empty());

    static CheckBits of(int total, int data) {
        if (total <= 0 || data <= 0) {
            return UNKNOWN;
        }
        int low = Math.min(total, data);
        int high = Math.max(total, data);
        boolean known = low == 8 || low == 16 || low == 32 || low == 64 || low == 128;
        if (known && low == high && low <= 64) {
            return new CheckBits(Optional.of(ErrorCheck.NONE), Optional.empty());
        }
        if (known && (high == low + low / 8 || low == 64 && high == 80 || low == 32 && high == 40)) {
            return new CheckBits(Optional.of(ErrorCheck.ECC),
                    total < data ? Optional.of(Lie.SWAPPED_WIDTHS) : Optional.empty());
        }
        return new CheckBits(Optional.empty(), Optional.of(Lie.WIDTHS));
    }
}
