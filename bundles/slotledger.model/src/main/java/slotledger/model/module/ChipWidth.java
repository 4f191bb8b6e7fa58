package slotledger.model.module;

import java.util.Optional;

/** Data bits of one memory chip. */
public enum ChipWidth {
    X1(1),
    X4(4),
    X8(8),
    X9(9),
    X16(16),
    X18(18),
    X32(32);

    private final int bits;

    ChipWidth(int bits) {
        this.bits = bits;
    }

    public int bits() {
        return bits;
    }

    public static Optional<ChipWidth> ofBits(int bits) {
        for (ChipWidth width : values()) {
            if (width.bits == bits) {
                return Optional.of(width);
            }
        }
        return Optional.empty();
    }

    /** "x8". */
    public String text() {
        return "x" + bits;
    }
}
