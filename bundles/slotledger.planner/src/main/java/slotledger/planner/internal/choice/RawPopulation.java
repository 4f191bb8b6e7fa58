package slotledger.planner.internal.choice;

import java.util.Arrays;
import java.util.Comparator;

/**
 * A population as numbers, before any rule was asked: fast to make, compare and drop.
 *
 * @param codes   for each socket what is in it, see {@link ClassSockets}
 * @param net     modules taken from outside less modules given away, by kind
 * @param touches modules and fillers that leave, enter or change their socket
 * @param size    KiB of all modules taken from outside
 */
record RawPopulation(int[] codes, int[] net, int touches, long size) {

    /** Least work first, then least memory, then a fixed order. */
    static final Comparator<RawPopulation> ORDER = Comparator.comparingInt(RawPopulation::touches)
            .thenComparingLong(RawPopulation::size)
            .thenComparing(RawPopulation::codes, Arrays::compare);

    /** Whether this takes no more of anything, frees no less and is no more work. */
    boolean isNoWorseThan(RawPopulation other) {
        if (touches > other.touches) {
            return false;
        }
        for (int i = 0; i < net.length; i++) {
            if (net[i] > other.net[i]) {
                return false;
            }
        }
        return true;
    }

    /** Whether it gives away something that is of use elsewhere. */
    boolean frees() {
        return Arrays.stream(net).anyMatch(count -> count < 0);
    }

    boolean costsTheSameAs(RawPopulation other) {
        return touches == other.touches && Arrays.equals(net, other.net);
    }
}
