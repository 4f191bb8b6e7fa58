package slotledger.rules.internal.operation;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import slotledger.model.board.Board;
import slotledger.model.board.Channel;
import slotledger.model.board.Interleave;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.ChannelMode;
import slotledger.rules.spi.Situation;

/**
 * What the channels of one processor hold, and how much of it runs together.
 *
 * <p>Equal totals all run together. With unequal totals "the channel populated with the least amount of memory
 * describes the total amount of memory assigned to dual channel and the remainder is assigned to single" (HP Hardware
 * Reference Guide 8FJ83EA); boards that can't do so run one channel at a time (Intel datasheet of the 3560M, 2.1.3).
 * With three channels or more the remainder is split again over those that hold more (common practice, no source).
 */
public final class Split {

    private final List<String> names;
    private final long[] kibibytes;
    private final int[] spans;
    private final long[] paths;
    private final int all;
    private final boolean joined;
    private final List<Step> steps;

    private Split(List<String> names, long[] kibibytes, int[] spans, int all, Interleave interleave) {
        this.names = names;
        this.kibibytes = kibibytes;
        this.spans = spans;
        paths = paths(kibibytes, spans);
        this.all = all;
        joined = switch (interleave) {
            case FLEXIBLE -> true;
            case EQUAL_ONLY, UNKNOWN -> isEqual();
            case NONE -> names.size() == 1;
        };
        steps = joined ? together(paths) : alone(paths);
    }

    /**
     * Memory that runs over so many memory channels.
     *
     * @param channels  memory channels
     * @param kibibytes in all of them together
     */
    public record Step(int channels, long kibibytes) {
    }

    /** The channels of one processor. */
    public static Split of(Situation situation, int processor) {
        Board board = situation.board();
        int channels = board.channels().size();
        List<String> names = new ArrayList<>(channels);
        long[] totals = new long[channels];
        int[] spans = new int[channels];
        int all = 0;
        int filled = 0;
        for (int i = 0; i < channels; i++) {
            Channel channel = board.channels().get(i);
            if (channel.processor() == processor) {
                all++;
                if (situation.channelKibibytes(i) > 0) {
                    names.add(channel.name());
                    totals[filled] = situation.channelKibibytes(i);
                    spans[filled++] = channel.spans();
                }
            }
        }
        totals = Arrays.copyOf(totals, filled);
        return new Split(names, totals, spans, all, board.interleave());
    }

    /** How all processors run: as many channels together as the processor with the fewest has. */
    public static ChannelMode mode(Situation situation) {
        ChannelMode mode = of(situation, 1).mode();
        for (int processor = 2; processor <= situation.setup().processors(); processor++) {
            ChannelMode other = of(situation, processor).mode();
            int channels = mode.channels() == 0 ? other.channels()
                    : other.channels() == 0 ? mode.channels() : Math.min(mode.channels(), other.channels());
            mode = new ChannelMode(channels, mode.together().plus(other.together()),
                    mode.remainder().plus(other.remainder()));
        }
        return mode;
    }

    /** How the channels of this processor run. */
    public ChannelMode mode() {
        if (steps.isEmpty()) {
            return new ChannelMode(0, Capacity.NONE, Capacity.NONE);
        }
        long rest = 0;
        for (Step step : steps) {
            rest += step.kibibytes();
        }
        long together = steps.get(0).kibibytes();
        return new ChannelMode(steps.get(0).channels(), Capacity.ofKiB(together), Capacity.ofKiB(rest - together));
    }

    /** What each memory channel holds, least first: a module that carries two brings half to each. */
    private static long[] paths(long[] totals, int[] spans) {
        long[] paths = new long[Arrays.stream(spans).sum()];
        int next = 0;
        for (int i = 0; i < totals.length; i++) {
            for (int path = 0; path < spans[i]; path++) {
                paths[next++] = totals[i] / spans[i];
            }
        }
        Arrays.sort(paths);
        return paths;
    }

    private static List<Step> alone(long[] paths) {
        return paths.length == 0 ? List.of() : List.of(new Step(1, Arrays.stream(paths).sum()));
    }

    private static List<Step> together(long[] paths) {
        List<Step> steps = new ArrayList<>(2);
        long below = 0;
        for (int i = 0; i < paths.length; i++) {
            if (paths[i] > below) {
                steps.add(new Step(paths.length - i, (paths[i] - below) * (paths.length - i)));
                below = paths[i];
            }
        }
        return steps;
    }

    /** Channels with memory. */
    public List<String> names() {
        return names;
    }

    /** How many channels there are, empty ones too. */
    public int all() {
        return all;
    }

    /** Whether channels run together. */
    public boolean isJoined() {
        return joined;
    }

    /** Memory by the memory channels it runs over, most channels first. */
    public List<Step> steps() {
        return steps;
    }

    /** Whether every memory channel that holds any holds the same. */
    public boolean isEqual() {
        return paths.length == 0 || paths[0] == paths[paths.length - 1];
    }

    /** What all channels hold. */
    public Capacity total() {
        return Capacity.ofKiB(Arrays.stream(kibibytes).sum());
    }

    /** "A 8 GB, B 4 GB"; "A 16 GB over 2 channels" where a module carries two. */
    public String text() {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            parts.add(names.get(i) + " " + Capacity.ofKiB(kibibytes[i])
                    + (spans[i] == 1 ? "" : " over " + spans[i] + " channels"));
        }
        return String.join(", ", parts);
    }
}
