package slotledger.planner.internal.delivery;

import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slotledger.model.delivery.Delivery;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;

/**
 * Checks an allotment, knowing nothing of how it was found: no more is allotted than is there, nothing twice, and each
 * machine that is said to be ready gets all it needs. An allotment that fails is a programming error.
 */
public final class AllotmentAudit {

    private final Map<Piece, Integer> there;
    private final Map<String, Integer> arrived = new LinkedHashMap<>();
    private final Map<Piece, Integer> allotted = new LinkedHashMap<>();
    private final Map<String, Integer> ofLines = new LinkedHashMap<>();
    private final Set<Station> emptied = new HashSet<>();

    /**
     * An audit.
     *
     * @param there what is to be had beside what the machines give
     * @param lines what arrived of each order line
     */
    public AllotmentAudit(Map<Piece, Integer> there, List<Delivery.Line> lines) {
        this.there = there;
        lines.forEach(line -> arrived.put(line.purchase().offer().id(), line.usable()));
    }

    public void check(Plan now) {
        now.machines().forEach(this::check);
        allotted.forEach((piece, count) -> require(count <= there.getOrDefault(piece, 0),
                "Of %s no more may be allotted (%d) than is there (%d).", piece, count, there.getOrDefault(piece, 0)));
        ofLines.forEach((offer, count) -> require(count <= arrived.getOrDefault(offer, 0),
                "Of the order line %s no more may be allotted (%d) than arrived (%d).", offer, count,
                arrived.getOrDefault(offer, 0)));
    }

    private void check(MachinePlan machine) {
        Map<String, SlotContent> slots = new LinkedHashMap<>(machine.before().contents());
        for (Move move : machine.moves()) {
            if (isIn(move.from(), machine)) {
                slots.put(((Station.InSlot) move.from()).slot(), SlotContent.EMPTY);
            }
        }
        for (Move move : machine.moves()) {
            if (isIn(move.to(), machine)) {
                slots.put(((Station.InSlot) move.to()).slot(), move.content());
                take(move);
            }
        }
        require(new Population(slots).equals(machine.after()),
                "Machine %s must get every module it needs.", machine.machine().tag());
    }

    private void take(Move move) {
        if (move.from() instanceof Station.InSlot) {
            require(emptied.add(move.from()), "What is in %s must go to one place only.", move.from());
            return;
        }
        require(!(move.from() instanceof Station.Disposal), "Nothing may come out of what was given away.");
        move.content().piece().ifPresent(piece -> allotted.merge(piece, 1, Integer::sum));
        if (move.from() instanceof Station.FromOrder order) {
            ofLines.merge(order.offer(), 1, Integer::sum);
        }
    }

    private static boolean isIn(Station station, MachinePlan machine) {
        return station instanceof Station.InSlot slot && slot.machine().equals(machine.machine().tag());
    }

    private static void require(boolean holds, String message, Object... values) {
        if (!holds) {
            throw new IllegalStateException(message.formatted(values) + " Maybe the planner has a fault.");
        }
    }
}
