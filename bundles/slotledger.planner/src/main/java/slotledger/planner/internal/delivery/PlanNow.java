package slotledger.planner.internal.delivery;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.model.delivery.Delivery;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;
import slotledger.model.trade.Shelf;
import slotledger.model.unit.Money;
import slotledger.planner.internal.order.Opening;
import slotledger.planner.internal.order.SlotChanges;
import slotledger.planner.internal.order.Supplies;
import slotledger.planner.internal.order.Unit;
import slotledger.planner.internal.order.Workshop;

/** Cuts a plan down to the machines that can be done now, and names every module's way anew. */
final class PlanNow {

    private final Plan plan;
    private final Set<AssetTag> done;
    private final Set<AssetTag> ready;
    private final Workshop workshop;
    private final Map<AssetTag, Integer> places = new HashMap<>();
    private final Map<Piece, Integer> left;

    PlanNow(Plan plan, List<Delivery.Line> lines, Set<AssetTag> done, Set<AssetTag> ready, Map<Piece, Integer> there) {
        this.plan = plan;
        this.done = done;
        this.ready = ready;
        this.left = new LinkedHashMap<>(there);
        List<Opening> openings = new ArrayList<>();
        Map<Piece, Integer> needed = new LinkedHashMap<>();
        for (MachinePlan machine : plan.work()) {
            if (ready.contains(machine.machine().tag())) {
                SlotChanges changes = SlotChanges.of(machine.before(), machine.after());
                places.put(machine.machine().tag(), openings.size());
                openings.add(new Opening(machine.machine().tag(), machine.machine().where(), "", machine.before(),
                        changes));
                changes.in().values().forEach(content -> content.piece()
                        .ifPresent(piece -> needed.merge(piece, 1, Integer::sum)));
            }
        }
        List<Lot> lots = new ArrayList<>();
        for (Delivery.Line line : lines) {
            Piece piece = line.purchase().offer().piece();
            int count = Math.min(line.usable(),
                    Math.min(needed.getOrDefault(piece, 0), left.getOrDefault(piece, 0)));
            needed.merge(piece, -count, Integer::sum);
            left.merge(piece, -count, Integer::sum);
            lots.add(new Lot(piece, line.purchase().offer().id(), count));
        }
        Map<Piece, Integer> owned = new LinkedHashMap<>(left);
        owned.values().removeIf(count -> count == 0);
        Supplies supplies = new Supplies(new Shelf(owned));
        lots.forEach(lot -> supplies.order(lot.piece, "", lot.offer, lot.count));
        this.workshop = new Workshop(openings, supplies, plan.policy().reusePulled());
    }

    private record Lot(Piece piece, String offer, int count) {
    }

    Plan plan() {
        List<Leftover> leftovers = new ArrayList<>();
        workshop.shelf().forEach((piece, count) -> leftovers.add(new Leftover(
                SlotContent.of(piece), count, Leftover.Origin.SHELF, new Station.OnShelf())));
        Map<SlotContent, Integer> pulled = new LinkedHashMap<>();
        for (Unit unit : workshop.rest()) {
            unit.goesTo(new Station.OnShelf());
            pulled.merge(unit.content(), 1, Integer::sum);
        }
        pulled.forEach((content, count) -> leftovers.add(new Leftover(
                content, count, Leftover.Origin.PULLED, new Station.OnShelf())));
        List<MachinePlan> machines = plan.machines().stream().map(this::machine).toList();
        return new Plan(plan.title() + ": what can be done now", plan.date(), plan.policy(), machines,
                plan.purchases(), leftovers, plan.spending(), plan.optimality(), List.of(), plan.choices(),
                plan.insights());
    }

    private MachinePlan machine(MachinePlan planned) {
        AssetTag tag = planned.machine().tag();
        if (!planned.isOpened()) {
            return planned;
        }
        if (ready.contains(tag)) {
            return new MachinePlan(planned.machine(), planned.target(), planned.after(), planned.outcome(),
                    workshop.moves(places.get(tag)), planned.runsNow(), planned.runsAfter(), planned.obstacle(),
                    planned.labour(), workshop.turn(places.get(tag)));
        }
        boolean finished = done.contains(tag);
        Population population = finished ? planned.after() : planned.before();
        Outcome outcome = planned.outcome() == Outcome.DONOR || finished && planned.obstacle().isEmpty()
                ? Outcome.ON_TARGET : Outcome.NOT_HELPED;
        Optional<Obstacle> obstacle = outcome == Outcome.ON_TARGET ? Optional.empty()
                : finished ? planned.obstacle() : Optional.of(new Obstacle(Obstacle.Kind.STOCK,
                        "It waits for modules that have not arrived or are not pulled yet.",
                        "Nothing: it is done when they are there.", List.of()));
        return new MachinePlan(with(planned.machine(), population), planned.target(), population, outcome, List.of(),
                finished ? planned.runsAfter() : planned.runsNow(), finished ? planned.runsAfter() : planned.runsNow(),
                obstacle, Money.zero(planned.labour().currency()), 0);
    }

    private static Machine with(Machine machine, Population population) {
        return new Machine(machine.tag(), machine.serial(), machine.where(), machine.costCentre(), machine.role(),
                machine.board(), machine.processors(), machine.processor(), machine.operatingSystem(),
                machine.redundancy(), population, machine.place());
    }
}
