package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntBinaryOperator;

/** Fillings of which none beats another: none takes no more of every kind, frees no less and is no more work. */
final class Frontier {

    private static final int BITS = 63;

    /**
     * What a filling costs.
     *
     * @param net     pieces taken from outside less pieces given away, by kind
     * @param takes   a bit for every kind taken; kinds may share one
     * @param gives   a bit for every kind given away; kinds may share one
     * @param touches pieces that leave, enter or change their socket
     */
    record Cost(int[] net, long takes, long gives, int touches) {

        /** What it costs to have so many of each kind, with at least so much work as that takes in any order. */
        static Cost least(ClassSockets sockets, int[] counts) {
            int[] net = new int[counts.length];
            long takes = 0;
            long gives = 0;
            int touches = 0;
            for (int kind = 0; kind < net.length; kind++) {
                int more = counts[kind] - sockets.owned(kind);
                touches += Math.abs(more);
                if (more > 0) {
                    net[kind] = more;
                    takes |= 1L << (kind & BITS);
                } else if (more < 0 && sockets.isWorth(kind)) {
                    net[kind] = more;
                    gives |= 1L << (kind & BITS);
                }
            }
            return new Cost(net, takes, gives, touches);
        }

        Cost withTouches(int count) {
            return new Cost(net, takes, gives, count);
        }

        boolean frees() {
            return gives != 0;
        }

        boolean isNoWorseThan(Cost other) {
            if (touches > other.touches || (takes & ~other.takes) != 0 || (other.gives & ~gives) != 0) {
                return false;
            }
            for (int kind = 0; kind < net.length; kind++) {
                if (net[kind] > other.net[kind]) {
                    return false;
                }
            }
            return true;
        }

        boolean isSameAs(Cost other) {
            return touches == other.touches && takes == other.takes && gives == other.gives
                    && Arrays.equals(net, other.net);
        }
    }

    /**
     * A filling that nothing beats so far.
     *
     * @param cost   what it costs
     * @param counts pieces in the sockets, by kind
     * @param place  which filling it is
     */
    record Kept(Cost cost, int[] counts, int place) {
    }

    private final List<Kept> kept = new ArrayList<>();

    /** Whether another one is no worse; one of the very same cost may still be preferred. */
    boolean beats(Cost cost) {
        for (Kept each : kept) {
            if (each.cost().isNoWorseThan(cost) && !each.cost().isSameAs(cost)) {
                return true;
            }
        }
        return false;
    }

    /** Adds one that isn't beaten, in the place of those it beats; of two of the same cost the better one stays. */
    void add(Kept fresh, IntBinaryOperator better) {
        for (int i = 0; i < kept.size(); i++) {
            if (kept.get(i).cost().isSameAs(fresh.cost())) {
                if (better.applyAsInt(kept.get(i).place(), fresh.place()) == fresh.place()) {
                    kept.set(i, fresh);
                }
                return;
            }
        }
        kept.removeIf(each -> fresh.cost().isNoWorseThan(each.cost()));
        kept.add(fresh);
    }

    List<Kept> kept() {
        return kept;
    }
}
