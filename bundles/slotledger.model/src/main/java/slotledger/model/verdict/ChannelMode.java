package slotledger.model.verdict;

import java.util.Objects;
import slotledger.model.unit.Capacity;

/**
 * How the channels of a board run together.
 *
 * @param channels  channels that run together for the interleaved part, 1 for a single channel, 0 without memory
 * @param together  memory that runs over all those channels
 * @param remainder memory that runs on fewer channels; none where all runs together
 */
public record ChannelMode(int channels, Capacity together, Capacity remainder) {

    private static final String[] NAMES = {"no memory", "single", "dual", "triple", "quad"};

    public ChannelMode {
        Objects.requireNonNull(together, "together");
        Objects.requireNonNull(remainder, "remainder");
        if (channels < 0) {
            throw new IllegalArgumentException("The channels (%d) must not be negative.".formatted(channels));
        }
    }

    /** "dual channel", "dual channel with 4 GB alone", "6 channels". */
    @Override
    public String toString() {
        String name = channels == 0 ? NAMES[0]
                : channels < NAMES.length ? NAMES[channels] + " channel" : channels + " channels";
        return remainder.isNone() || channels <= 1 ? name : name + " with " + remainder + " alone";
    }
}
