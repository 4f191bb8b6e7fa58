package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;
import slotledger.planner.PlanRequest;
import slotledger.planner.internal.choice.Fit;
import slotledger.planner.internal.choice.JudgedBoard;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.model.Choice;
import slotledger.planner.internal.order.Opening;
import slotledger.planner.internal.order.Supplies;
import slotledger.planner.internal.order.Unit;
import slotledger.planner.internal.order.Workshop;

/** The decisions for classes brought down to single machines and modules; machines by their place in the fleet. */
public final class Expansion {

    private record Heap(SlotContent content, Leftover.Origin origin, Station to) {
    }

    private final List<Machine> machines;
    private final Assignment[] assignments;
    private final List<List<Move>> moves;
    private final int[] turns;
    private final int[] order;
    private final List<Leftover> leftovers;
    private final Map<AssetTag, List<Move>> rings;

    /** Expands the decisions. */
    public static Expansion of(PlanRequest request, Stock stock, Choice choice, List<JudgedBoard> boards) {
        return new Expansion(request, stock, choice, boards);
    }

    private Expansion(PlanRequest request, Stock stock, Choice choice, List<JudgedBoard> boards) {
        machines = request.fleet().machines();
        Map<AssetTag, Integer> places = new HashMap<>(2 * machines.size());
        machines.forEach(machine -> places.put(machine.tag(), places.size()));
        assignments = Assignment.assign(choice, request.before(), places);
        int[] opened = IntStream.range(0, assignments.length).filter(place -> assignments[place].isOpened()).toArray();
        List<Opening> openings = new ArrayList<>(opened.length);
        for (int place : opened) {
            openings.add(opening(place));
        }
        Workshop workshop = new Workshop(openings, supplies(request, stock, choice), request.policy().reusePulled());
        leftovers = leftovers(workshop, boards);
        rings = workshop.rings();
        turns = new int[assignments.length];
        List<List<Move>> all = new ArrayList<>(Collections.nCopies(assignments.length, List.of()));
        for (int number = 0; number < opened.length; number++) {
            turns[opened[number]] = workshop.turn(number);
            all.set(opened[number], workshop.moves(number));
        }
        moves = all;
        order = workshop.order();
        for (int turn = 0; turn < order.length; turn++) {
            order[turn] = opened[order[turn]];
        }
    }

    private Opening opening(int place) {
        Machine machine = machines.get(place);
        Options options = assignments[place].options();
        return new Opening(machine.tag(), machine.where(), options.group().costCentre(), options.group().now(),
                assignments[place].changes());
    }

    private static Supplies supplies(PlanRequest request, Stock stock, Choice choice) {
        Supplies supplies = new Supplies(request.shelf());
        for (int offer = 0; offer < stock.offers().size(); offer++) {
            for (int centre = 0; centre < choice.centres().size(); centre++) {
                supplies.order(stock.offers().get(offer).piece(), choice.centres().get(centre),
                        stock.offers().get(offer).id(), choice.uses(offer, centre));
            }
        }
        return supplies;
    }

    private static List<Leftover> leftovers(Workshop workshop, List<JudgedBoard> boards) {
        Map<Heap, Integer> heaps = new LinkedHashMap<>();
        workshop.shelf().forEach((piece, count) -> heaps.put(
                new Heap(SlotContent.of(piece), Leftover.Origin.SHELF, new Station.OnShelf()), count));
        Map<SlotContent, Station> destinations = new HashMap<>();
        for (Unit unit : workshop.rest()) {
            Station to = destinations.computeIfAbsent(unit.content(), content ->
                    isUseful(content, boards) ? new Station.OnShelf() : new Station.Disposal());
            unit.goesTo(to);
            heaps.merge(new Heap(unit.content(), Leftover.Origin.PULLED, to), 1, Integer::sum);
        }
        return heaps.entrySet().stream()
                .map(heap -> new Leftover(
                        heap.getKey().content(), heap.getValue(), heap.getKey().origin(), heap.getKey().to()))
                .toList();
    }

    /** A module is worth keeping where some board of the fleet takes it or might take it; a filler is hard to get. */
    private static boolean isUseful(SlotContent content, List<JudgedBoard> boards) {
        return content.module().isEmpty()
                || boards.stream().anyMatch(board -> board.fit(content.module().get()) != Fit.BLOCKED);
    }

    /** What a machine gets. */
    Assignment assignment(int machine) {
        return assignments[machine];
    }

    /** Every machine, in inventory order. */
    List<Machine> machines() {
        return machines;
    }

    /** The moves of a machine; none where it isn't opened. */
    List<Move> moves(int machine) {
        return moves.get(machine);
    }

    /** Place of a machine in the order of work; 0 where it isn't opened. */
    int turn(int machine) {
        return turns[machine];
    }

    /** Opened machines, first ones first. */
    int[] inWorkOrder() {
        return order.clone();
    }

    /** Modules owned that nobody needs. */
    public List<Leftover> leftovers() {
        return leftovers;
    }

    /** Machines opened before a module they need is pulled, and how it comes at last. */
    public Map<AssetTag, List<Move>> rings() {
        return rings;
    }

    /** Who pays for a machine: the budget that limits it, else as the inventory says. */
    String costCentre(int machine) {
        String limited = assignments[machine].options().group().costCentre();
        return limited.isEmpty() ? machines.get(machine).costCentre().strip() : limited;
    }
}
