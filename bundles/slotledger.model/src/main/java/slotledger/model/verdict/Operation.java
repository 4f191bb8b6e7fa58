package slotledger.model.verdict;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;

/**
 * How a population runs.
 *
 * @param installed all memory in the slots
 * @param addressable what processor and chipset address of it, where a limit is known; else as installed
 * @param usable    what is left of that once mirroring or sparing and the operating system took their part. A share
 *                  kept by hardware is not counted.
 * @param mode      how the channels run together
 * @param rate      the rate everything runs at; empty means unknown
 * @param rateWhy   what set the rate, one sentence; may be empty
 * @param peak      peak bandwidth of the part that runs together; none where the rate is unknown
 * @param ecc       whether errors are checked and corrected
 */
public record Operation(
        Capacity installed,
        Capacity addressable,
        Capacity usable,
        ChannelMode mode,
        Optional<Rate> rate,
        String rateWhy,
        Bandwidth peak,
        boolean ecc) {

    public Operation {
        Objects.requireNonNull(installed, "installed");
        Objects.requireNonNull(addressable, "addressable");
        Objects.requireNonNull(usable, "usable");
        Objects.requireNonNull(mode, "mode");
        Objects.requireNonNull(rate, "rate");
        Objects.requireNonNull(rateWhy, "rateWhy");
        Objects.requireNonNull(peak, "peak");
    }
}
