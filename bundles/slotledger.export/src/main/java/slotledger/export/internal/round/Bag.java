package slotledger.export.internal.round;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import slotledger.export.PlanBook;
import slotledger.export.internal.text.Words;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/**
 * What goes into the bag of one machine.
 *
 * @param plan  whose bag it is
 * @param items what is in it
 */
public record Bag(MachinePlan plan, List<Item> items) {

    /**
     * Modules of one kind from one place.
     *
     * @param content what they are
     * @param count   how many
     * @param from    where they are fetched
     * @param early   whether they are there before the round begins; else another machine gives them on the way
     * @param slots   into which slots they go
     */
    public record Item(SlotContent content, int count, String from, boolean early, List<String> slots) {}

    /** The bag of every machine that gets a module, in walking order. */
    public static List<Bag> of(PlanBook book, List<Stop> stops) {
        return stops.stream()
                .flatMap(stop -> stop.machines().stream())
                .map(machine -> new Bag(machine, items(book, machine)))
                .filter(bag -> !bag.items().isEmpty())
                .toList();
    }

    private static List<Item> items(PlanBook book, MachinePlan plan) {
        Map<String, Item> items = new LinkedHashMap<>();
        for (Move move : plan.moves()) {
            boolean arrives = move.to() instanceof Station.InSlot to && to.machine().equals(plan.machine().tag())
                    && !(move.from() instanceof Station.InSlot from && from.machine().equals(plan.machine().tag()));
            if (arrives) {
                String from = Words.station(move.from(), book);
                String slot = ((Station.InSlot) move.to()).slot();
                boolean early = !(move.from() instanceof Station.InSlot);
                items.merge(move.content() + "\n" + from,
                        new Item(move.content(), 1, from, early, List.of(slot)), Bag::joined);
            }
        }
        return List.copyOf(items.values());
    }

    private static Item joined(Item one, Item other) {
        List<String> slots = new ArrayList<>(one.slots());
        slots.addAll(other.slots());
        return new Item(one.content(), one.count() + other.count(), one.from(), one.early(), List.copyOf(slots));
    }

    /** What all bags together need from order and shelf, by place and kind. */
    public static List<Item> toFetch(List<Bag> bags) {
        Map<String, Item> items = new TreeMap<>();
        bags.stream()
                .flatMap(bag -> bag.items().stream())
                .filter(Item::early)
                .forEach(item -> items.merge(item.from() + "\n" + item.content(),
                        new Item(item.content(), item.count(), item.from(), true, List.of()), Bag::joined));
        return List.copyOf(items.values());
    }
}
