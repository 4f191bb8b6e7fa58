package slotledger.rules.internal.operation;

import slotledger.model.board.EccOutcome;
import slotledger.model.module.ErrorCheck;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.Operation;
import slotledger.rules.internal.limits.SystemLimit;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/** How a population runs. */
public final class Running {

    private static final int DATA_BITS = 64;

    private Running() {
    }

    /**
     * Mode, rate, peak bandwidth, usable memory and ECC. The mode counts the channels of one processor; so does the
     * peak bandwidth. A channel is 64 data bits wide: DDR5's two half channels of a module count as one.
     */
    public static Operation of(Situation situation) {
        ChannelMode mode = Split.of(situation).mode();
        RunningRate rate = RunningRate.of(situation);
        Bandwidth peak = rate.rate().map(known -> known.peak(DATA_BITS).times(mode.channels())).orElse(Bandwidth.NONE);
        Capacity installed = situation.total();
        return new Operation(installed, installed, usable(situation), mode, rate.rate(), rate.why(), peak,
                checksErrors(situation));
    }

    private static Capacity usable(Situation situation) {
        Capacity usable = situation.total();
        if (situation.setup().processor().isPresent()
                && situation.setup().processor().get().largestTotal().isPresent()) {
            Capacity each = situation.setup().processor().get().largestTotal().get();
            usable = usable.min(each.times(situation.setup().processors()));
        }
        if (situation.setup().operatingSystem().isPresent()) {
            SystemLimit limit = SystemLimit.of(situation.setup().operatingSystem().get());
            usable = limit.most().isPresent() ? usable.min(limit.most().get()) : usable;
        }
        return usable;
    }

    private static boolean checksErrors(Situation situation) {
        for (Placed module : situation.modules()) {
            EccOutcome outcome = module.takes().isEmpty() ? EccOutcome.UNKNOWN : module.takes().get().ecc();
            boolean uses = outcome == EccOutcome.USED || outcome == EccOutcome.REQUIRED;
            if (!uses || module.kind().errorCheck().filter(check -> check == ErrorCheck.ECC).isEmpty()) {
                return false;
            }
        }
        return !situation.modules().isEmpty();
    }
}
