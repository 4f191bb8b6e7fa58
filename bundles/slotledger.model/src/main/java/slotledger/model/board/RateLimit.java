package slotledger.model.board;

import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.module.Buffering;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/**
 * A printed limit of the rate. It holds for a channel where every condition that is present holds; the lowest limit
 * that holds for any channel sets the rate of all.
 *
 * @param modulesPerChannel so many modules in the channel
 * @param ranks             the module with the most ranks in the channel has so many
 * @param buffering         modules are of this buffering
 * @param voltage           modules run at this voltage
 * @param fastest           the highest rate then
 */
public record RateLimit(
        OptionalInt modulesPerChannel,
        OptionalInt ranks,
        Optional<Buffering> buffering,
        Optional<Voltage> voltage,
        Rate fastest) {

    public RateLimit {
        Objects.requireNonNull(modulesPerChannel, "modulesPerChannel");
        Objects.requireNonNull(ranks, "ranks");
        Objects.requireNonNull(buffering, "buffering");
        Objects.requireNonNull(voltage, "voltage");
        Objects.requireNonNull(fastest, "fastest");
    }

    /** A limit of the board whatever is in it. */
    public static RateLimit always(Rate fastest) {
        return new RateLimit(OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty(), fastest);
    }
}
