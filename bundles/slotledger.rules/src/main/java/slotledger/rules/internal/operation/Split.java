package slotledger.rules.internal.operation;

import java.util.ArrayList;
import java.util.List;
import slotledger.model.board.Board;
import slotledger.model.board.Channel;
import slotledger.model.board.Interleave;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.ChannelMode;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/**
 * What the channels of one processor, or of all, hold, and how much of it runs together.
 *
 * <p>Equal totals all run together. With unequal totals "the channel populated with the least amount of memory
 * describes the total amount of memory assigned to dual channel and the remainder is assigned to single" (HP Hardware
 * Reference Guide 8FJ83EA); boards that can't do so run one channel at a time (Intel datasheet of the 3560M, 2.1.3).
 *
 * @param names     channels with memory
 * @param kibibytes what each holds
 * @param all       how many channels there are, empty ones too
 * @param mode      how they run
 */
public record Split(List<String> names, List<Long> kibibytes, int all, ChannelMode mode) {

    public Split {
        names = List.copyOf(names);
        kibibytes = List.copyOf(kibibytes);
    }

    /** The processors together: as many channels as the processor with the fewest has together. */
    public static Split of(Situation situation) {
        Split joined = of(situation, 1);
        for (int processor = 2; processor <= situation.setup().processors(); processor++) {
            joined = joined.and(of(situation, processor));
        }
        return joined;
    }

    /** The channels of one processor. */
    public static Split of(Situation situation, int processor) {
        Board board = situation.board();
        long[] totals = new long[board.channels().size()];
        for (Placed module : situation.modules()) {
            totals[module.channel()] += module.kind().capacity().kibibytes();
        }
        List<String> names = new ArrayList<>(totals.length);
        List<Long> filled = new ArrayList<>(totals.length);
        int all = 0;
        for (int i = 0; i < totals.length; i++) {
            Channel channel = board.channels().get(i);
            if (channel.processor() == processor) {
                all++;
                if (totals[i] > 0) {
                    names.add(channel.name());
                    filled.add(totals[i]);
                }
            }
        }
        return new Split(names, filled, all, mode(filled, board.interleave()));
    }

    /** How channels with these totals run. */
    static ChannelMode mode(List<Long> filled, Interleave interleave) {
        if (filled.isEmpty()) {
            return new ChannelMode(0, Capacity.NONE, Capacity.NONE);
        }
        long total = 0;
        long least = Long.MAX_VALUE;
        for (long each : filled) {
            total += each;
            least = Math.min(least, each);
        }
        long together = least * filled.size();
        boolean joined = switch (interleave) {
            case FLEXIBLE -> true;
            case EQUAL_ONLY, UNKNOWN -> together == total;
            case NONE -> false;
        };
        return joined
                ? new ChannelMode(filled.size(), Capacity.ofKiB(together), Capacity.ofKiB(total - together))
                : new ChannelMode(1, Capacity.ofKiB(total), Capacity.NONE);
    }

    public boolean isEqual() {
        return kibibytes.stream().distinct().count() <= 1;
    }

    /** What all channels hold. */
    public Capacity total() {
        return Capacity.ofKiB(kibibytes.stream().mapToLong(Long::longValue).sum());
    }

    /** "A 8 GB, B 4 GB". */
    public String text() {
        List<String> parts = new ArrayList<>();
        for (int i = 0; i < names.size(); i++) {
            parts.add(names.get(i) + " " + Capacity.ofKiB(kibibytes.get(i)));
        }
        return String.join(", ", parts);
    }

    private Split and(Split other) {
        List<String> allNames = new ArrayList<>(names);
        allNames.addAll(other.names);
        List<Long> allTotals = new ArrayList<>(kibibytes);
        allTotals.addAll(other.kibibytes);
        int channels = mode.channels() == 0 ? other.mode.channels()
                : other.mode.channels() == 0 ? mode.channels() : Math.min(mode.channels(), other.mode.channels());
        return new Split(allNames, allTotals, all + other.all, new ChannelMode(
                channels,
                mode.together().plus(other.mode.together()),
                mode.remainder().plus(other.mode.remainder())));
    }
}
