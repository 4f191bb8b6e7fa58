package slotledger.model.module;

/**
 * The capacity of one memory chip, in mebibits.
 *
 * @param mebibits 1 Mbit = 1 048 576 bits
 */
public record ChipSize(int mebibits) implements Comparable<ChipSize> {

    public ChipSize {
        if (mebibits < 1) {
            throw new IllegalArgumentException("The chip size (%d Mbit) must be at least 1.".formatted(mebibits));
        }
    }

    public static ChipSize ofMbit(int mebibits) {
        return new ChipSize(mebibits);
    }

    public static ChipSize ofGbit(int gibibits) {
        return new ChipSize(Math.multiplyExact(gibibits, 1024));
    }

    @Override
    public int compareTo(ChipSize other) {
        return Integer.compare(mebibits, other.mebibits);
    }

    /** "512 Mbit", "8 Gbit". */
    @Override
    public String toString() {
        return mebibits % 1024 == 0 ? mebibits / 1024 + " Gbit" : mebibits + " Mbit";
    }
}
