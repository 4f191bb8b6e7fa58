package slotledger.model.proof;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/**
 * What nobody needs after the work, and where it lies.
 *
 * @param content  what it is
 * @param disposal whether it goes to disposal or sale; else it is kept on the shelf
 * @param bags     machines whose bags hold it, and how many each
 * @param inside   machines that still hold it, because their work was not done or not seen
 * @param other    how many are spares or rests of packs, or were on the shelf before
 */
public record LeftOver(
        SlotContent content, boolean disposal, Map<AssetTag, Integer> bags, Map<AssetTag, Integer> inside, int other) {

    public LeftOver {
        Objects.requireNonNull(content, "content");
        bags = Collections.unmodifiableMap(new LinkedHashMap<>(bags));
        inside = Collections.unmodifiableMap(new LinkedHashMap<>(inside));
    }

    public int count() {
        return sum(bags) + sum(inside) + other;
    }

    private static int sum(Map<AssetTag, Integer> counts) {
        return counts.values().stream().mapToInt(Integer::intValue).sum();
    }

    /** All of a plan, those that are kept first. */
    public static List<LeftOver> of(CloseOut close) {
        Map<String, LeftOver> all = new LinkedHashMap<>();
        Map<AssetTag, ProofOutcome> ends = close.ends();
        for (MachinePlan machine : close.plan().work()) {
            AssetTag tag = machine.machine().tag();
            ProofOutcome end = ends.getOrDefault(tag, ProofOutcome.NOT_SEEN);
            boolean out = end == ProofOutcome.DONE || end == ProofOutcome.DONE_DIFFERENTLY;
            for (Move move : machine.moves()) {
                if (move.from() instanceof Station.InSlot from && from.machine().equals(tag)
                        && !(move.to() instanceof Station.InSlot)) {
                    Map<AssetTag, Integer> one = Map.of(tag, 1);
                    add(all, new LeftOver(move.content(), move.to() instanceof Station.Disposal,
                            out ? one : Map.of(), out ? Map.of() : one, 0));
                }
            }
        }
        for (Leftover leftover : close.plan().leftovers()) {
            if (leftover.origin() != Leftover.Origin.PULLED) {
                add(all, new LeftOver(leftover.content(), leftover.to() instanceof Station.Disposal, Map.of(), Map.of(),
                        leftover.count()));
            }
        }
        List<LeftOver> sorted = new ArrayList<>(all.values());
        sorted.sort((one, other) -> Boolean.compare(one.disposal(), other.disposal()));
        return List.copyOf(sorted);
    }

    private static void add(Map<String, LeftOver> all, LeftOver more) {
        all.merge(more.disposal() + " " + more.content(), more, (one, other) -> new LeftOver(one.content(),
                one.disposal(), joined(one.bags(), other.bags()), joined(one.inside(), other.inside()),
                one.other() + other.other()));
    }

    private static Map<AssetTag, Integer> joined(Map<AssetTag, Integer> one, Map<AssetTag, Integer> other) {
        Map<AssetTag, Integer> joined = new LinkedHashMap<>(one);
        other.forEach((tag, count) -> joined.merge(tag, count, Integer::sum));
        return joined;
    }
}
