package slotledger.planner.internal.choice;

import java.util.Arrays;
import slotledger.model.trade.Target;
import slotledger.planner.Targets;
import slotledger.rules.Setup;

/** Whether fillings of a board meet a target; remembered by the way they run. For one thread at a time. */
final class TargetCheck {

    private static final byte MEETS = 1;
    private static final byte MISSES = 2;

    private final JudgedSockets judged;
    private final Setup setup;
    private final Target target;
    private byte[] known = new byte[0];

    /**
     * A check.
     *
     * @param setup board and processors; what is in the slots doesn't matter
     */
    TargetCheck(JudgedSockets judged, Setup setup, Target target) {
        this.judged = judged;
        this.setup = setup;
        this.target = target;
    }

    Target target() {
        return target;
    }

    boolean meets(int place) {
        int way = judged.way(place);
        if (way >= known.length) {
            known = Arrays.copyOf(known, 2 * way + 1);
        }
        if (known[way] == 0) {
            known[way] = Targets.meets(target, setup, judged.runs(way)) ? MEETS : MISSES;
        }
        return known[way] == MEETS;
    }
}
