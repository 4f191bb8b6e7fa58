package slotledger.rules.internal.operation;

import slotledger.model.board.EccOutcome;
import slotledger.model.module.ErrorCheck;
import slotledger.model.unit.Bandwidth;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.Operation;
import slotledger.rules.internal.capacity.Counting;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/** How a population runs. */
public final class Running {

    private Running() {
    }

    /**
     * Mode, rate, peak bandwidth, addressable and usable memory and ECC. The mode counts the memory channels of one
     * processor; so does the peak bandwidth. DDR5's two half channels of a module count as one channel.
     */
    public static Operation of(Situation situation) {
        ChannelMode mode = Split.mode(situation);
        RunningRate rate = RunningRate.of(situation);
        Bandwidth peak = rate.rate().isEmpty()
                ? Bandwidth.NONE
                : rate.rate().get().peak(channelBits(situation)).times(mode.channels());
        return new Operation(situation.total(), Counting.addressable(situation), Counting.usable(situation), mode,
                rate.rate(), rate.why(), peak, checksErrors(situation));
    }

    /** Data bits of one memory channel; that of the first module, as modules of other widths never run together. */
    static int channelBits(Situation situation) {
        return situation.modules().isEmpty() ? 0 : ModuleFacts.channelBits(situation.modules().get(0).kind());
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
