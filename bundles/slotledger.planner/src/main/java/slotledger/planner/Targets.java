package slotledger.planner;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.board.Board;
import slotledger.model.board.Channel;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.board.SlotUse;
import slotledger.model.trade.Target;
import slotledger.model.verdict.Operation;
import slotledger.rules.Setup;

/** Compares how a machine runs with what its role must reach. */
public final class Targets {

    private Targets() {
    }

    public static boolean meets(Target target, Setup setup, Operation operation) {
        return shortfalls(target, setup, operation).isEmpty();
    }

    /** Whether the machine runs over at least as many channels as now; more memory is no gain where all is slower. */
    public static boolean keepsChannels(Operation now, Operation after) {
        return after.mode().channels() >= now.mode().channels();
    }

    /** What is missing, one phrase each, with the numbers compared; empty where the target is met. */
    public static List<String> shortfalls(Target target, Setup setup, Operation operation) {
        List<String> missing = new ArrayList<>();
        if (!operation.usable().atLeast(target.capacity())) {
            missing.add("%s usable memory instead of %s".formatted(operation.usable(), target.capacity()));
        }
        if (target.sameChannels()) {
            int channels = channels(setup);
            if (operation.mode().channels() < channels || !operation.mode().remainder().isNone()) {
                missing.add("%s instead of all memory over %d channels".formatted(operation.mode(), channels));
            }
        }
        if (target.ecc() && !operation.ecc()) {
            missing.add("no error correction");
        }
        target.rate().ifPresent(rate -> {
            if (operation.rate().isEmpty()) {
                missing.add("an unknown rate instead of %s".formatted(rate));
            } else if (operation.rate().get().compareTo(rate) < 0) {
                missing.add("%s instead of %s".formatted(operation.rate().get(), rate));
            }
        });
        return missing;
    }

    /**
     * Memory channels of one processor that have memory or can have it; a channel mode counts those of one processor.
     * Those whose memory doesn't count while some is kept back stay empty for good.
     */
    private static int channels(Setup setup) {
        Board board = setup.board();
        Set<String> ignored = board.terms(setup.redundancy())
                .map(RedundancyTerms::ignoredChannels)
                .orElse(Set.of());
        Map<Integer, Set<Channel>> byProcessor = board.slots().stream()
                .filter(slot -> slot.use() != SlotUse.DEAD)
                .map(slot -> board.channel(slot.channel()))
                .filter(channel -> channel.processor() <= setup.processors() && !ignored.contains(channel.name()))
                .collect(Collectors.groupingBy(Channel::processor, Collectors.toSet()));
        return byProcessor.values().stream()
                .mapToInt(channels -> channels.stream().mapToInt(Channel::spans).sum())
                .max().orElse(0);
    }
}
