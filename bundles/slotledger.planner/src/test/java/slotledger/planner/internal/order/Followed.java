package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/** Follows the moves of a finished order of work, slot by slot, and counts what lies ready and what is borrowed. */
final class Followed {

    final List<Opening> order = new ArrayList<>();
    int bench;
    int borrowed;
    int betweenSites;
    int visits;

    /** Fails where a module comes from nowhere, goes to two places, or a slot doesn't end as planned. */
    Followed(Errands errands, Workshop workshop) {
        order.addAll(errands.openings);
        Map<AssetTag, Integer> places = new HashMap<>();
        order.forEach(opening -> places.put(opening.tag(), places.size()));
        order.sort(Comparator.comparingInt(opening -> workshop.turn(places.get(opening.tag()))));
        Map<AssetTag, Opening> byTag = new HashMap<>();
        order.forEach(opening -> byTag.put(opening.tag(), opening));
        int[] lying = new int[order.size() + 1];
        int[] owing = new int[order.size() + 1];
        Set<Station> left = new HashSet<>();
        for (int place = 0; place < order.size(); place++) {
            Opening opening = order.get(place);
            require(workshop.turn(places.get(opening.tag())) == place + 1, "numbers without gaps");
            visits += place == 0 || !order.get(place - 1).where().equals(opening.where()) ? 1 : 0;
            Map<String, SlotContent> slots = new HashMap<>(opening.before().contents());
            for (Move move : workshop.moves(places.get(opening.tag()))) {
                if (move.from() instanceof Station.InSlot from && from.machine().equals(opening.tag())) {
                    require(slots.put(from.slot(), SlotContent.EMPTY).equals(move.content()), "leaves " + from);
                    require(left.add(from), "leaves once");
                }
            }
            for (Move move : workshop.moves(places.get(opening.tag()))) {
                if (move.to() instanceof Station.InSlot to && to.machine().equals(opening.tag())) {
                    require(slots.put(to.slot(), move.content()).isEmpty(), "enters " + to);
                    if (move.from() instanceof Station.InSlot from && !from.machine().equals(opening.tag())) {
                        Opening donor = byTag.get(from.machine());
                        require(donor.changes().out().get(from.slot()).equals(move.content()), "given by " + donor);
                        betweenSites += donor.where().site().equals(opening.where().site()) ? 0 : 1;
                        int donorPlace = workshop.turn(places.get(from.machine())) - 1;
                        int[] counts = donorPlace < place ? lying : owing;
                        counts[Math.min(place, donorPlace)]++;
                        counts[Math.max(place, donorPlace)]--;
                    }
                }
            }
            opening.changes().in().forEach((slot, content) ->
                    require(slots.get(slot).equals(content), "planned for " + slot));
        }
        bench = most(lying);
        borrowed = most(owing);
    }

    private static int most(int[] changes) {
        int now = 0;
        int most = 0;
        for (int change : changes) {
            now += change;
            most = Math.max(most, now);
        }
        return most;
    }

    private static void require(boolean holds, String what) {
        if (!holds) {
            throw new AssertionError(what);
        }
    }
}
