package slotledger.model.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;

/**
 * What must be known to walk a round.
 *
 * @param round whose sheet it is
 * @param after ids of rounds that must be done before, because modules come from their machines
 * @param waits modules that come out of machines of a later round
 * @param bags  what goes into the bag of each machine that gets a module from outside, in the order of work
 */
public record RoundSheet(Round round, List<String> after, List<Wait> waits, List<Bag> bags) {

    public RoundSheet {
        Objects.requireNonNull(round, "round");
        after = List.copyOf(after);
        waits = List.copyOf(waits);
        bags = List.copyOf(bags);
    }

    /**
     * A machine that is opened before what goes into it is there: it stays open, or gets a borrowed set until then.
     *
     * @param machine which machine
     * @param donor   the machine the module comes out of
     * @param round   id of the later round the donor is in
     */
    public record Wait(AssetTag machine, AssetTag donor, String round) {
        public Wait {
            Objects.requireNonNull(machine, "machine");
            Objects.requireNonNull(donor, "donor");
            Objects.requireNonNull(round, "round");
        }
    }

    /**
     * What is picked for one machine.
     *
     * @param machine whose bag it is
     * @param items   each module or filler
     */
    public record Bag(AssetTag machine, List<Item> items) {
        public Bag {
            Objects.requireNonNull(machine, "machine");
            items = List.copyOf(items);
        }
    }

    /**
     * One module or filler of a bag.
     *
     * @param content what it is
     * @param from    order, shelf, or the machine it comes out of
     * @param slot    where it goes
     */
    public record Item(SlotContent content, Station from, String slot) {
        public Item {
            Objects.requireNonNull(content, "content");
            Objects.requireNonNull(from, "from");
            Objects.requireNonNull(slot, "slot");
        }
    }

    /** The sheets of all rounds of a plan. */
    public static List<RoundSheet> of(Plan plan, List<Round> rounds) {
        Map<AssetTag, Integer> places = new HashMap<>();
        for (int place = 0; place < rounds.size(); place++) {
            for (AssetTag machine : rounds.get(place).machines()) {
                places.put(machine, place);
            }
        }
        Map<AssetTag, MachinePlan> machines = new HashMap<>();
        plan.machines().forEach(machine -> machines.put(machine.machine().tag(), machine));
        List<RoundSheet> sheets = new ArrayList<>();
        for (int place = 0; place < rounds.size(); place++) {
            sheets.add(sheet(rounds, place, places, machines));
        }
        return List.copyOf(sheets);
    }

    private static RoundSheet sheet(List<Round> rounds, int place, Map<AssetTag, Integer> places,
            Map<AssetTag, MachinePlan> machines) {
        Set<Integer> before = new TreeSet<>();
        List<Wait> waits = new ArrayList<>();
        List<Bag> bags = new ArrayList<>();
        for (AssetTag tag : rounds.get(place).machines()) {
            List<Item> items = machines.containsKey(tag) ? items(machines.get(tag)) : List.of();
            for (Item item : items) {
                Integer donor = item.from() instanceof Station.InSlot from ? places.get(from.machine()) : null;
                if (donor != null && donor < place) {
                    before.add(donor);
                } else if (donor != null && donor > place) {
                    waits.add(new Wait(tag, ((Station.InSlot) item.from()).machine(), rounds.get(donor).id()));
                }
            }
            if (!items.isEmpty()) {
                bags.add(new Bag(tag, items));
            }
        }
        return new RoundSheet(rounds.get(place), before.stream().map(rounds::get).map(Round::id).toList(),
                waits.stream().distinct().toList(), bags);
    }

    private static List<Item> items(MachinePlan machine) {
        AssetTag tag = machine.machine().tag();
        List<Item> items = new ArrayList<>();
        for (Move move : machine.moves()) {
            if (move.to() instanceof Station.InSlot to && to.machine().equals(tag)
                    && !(move.from() instanceof Station.InSlot from && from.machine().equals(tag))) {
                items.add(new Item(move.content(), move.from(), to.slot()));
            }
        }
        return items;
    }
}
