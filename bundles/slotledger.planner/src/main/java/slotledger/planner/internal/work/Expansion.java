package slotledger.planner.internal.work;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;
import slotledger.planner.PlanRequest;
import slotledger.planner.internal.choice.Fit;
import slotledger.planner.internal.choice.JudgedBoard;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.model.Choice;
import slotledger.planner.internal.order.Supplies;
import slotledger.planner.internal.order.Unit;
import slotledger.planner.internal.order.Workshop;

/**
 * The decisions for classes brought down to single machines and modules.
 *
 * @param jobs      every machine, by asset tag
 * @param moves     of every machine, by asset tag
 * @param numbers   places in the order of work; 0 where a machine isn't opened
 * @param leftovers modules owned that nobody needs
 * @param rings     machines opened before a module they need is pulled, and how it comes at last
 */
public record Expansion(
        Map<AssetTag, Job> jobs,
        Map<AssetTag, List<Move>> moves,
        Map<AssetTag, Integer> numbers,
        List<Leftover> leftovers,
        Map<AssetTag, List<Move>> rings) {

    private record Heap(SlotContent content, Leftover.Origin origin, Station to) {
    }

    public Expansion {
        Objects.requireNonNull(jobs, "jobs");
        Objects.requireNonNull(moves, "moves");
        Objects.requireNonNull(numbers, "numbers");
        leftovers = List.copyOf(leftovers);
        Objects.requireNonNull(rings, "rings");
    }

    /** Expands the decisions. */
    public static Expansion of(PlanRequest request, Stock stock, Choice choice, List<JudgedBoard> boards) {
        List<Job> jobs = Job.assign(choice);
        Workshop workshop = new Workshop(
                jobs.stream().filter(Job::isOpened).map(Job::opening).toList(),
                supplies(request, stock, choice),
                request.policy().reusePulled());
        Map<Heap, Integer> heaps = new LinkedHashMap<>();
        workshop.shelf().forEach((piece, count) -> heaps.put(
                new Heap(SlotContent.of(piece), Leftover.Origin.SHELF, new Station.OnShelf()), count));
        for (Unit unit : workshop.rest()) {
            heaps.merge(heap(unit, boards), 1, Integer::sum);
        }
        Map<AssetTag, Job> byTag = new HashMap<>();
        Map<AssetTag, List<Move>> moves = new HashMap<>();
        Map<AssetTag, Integer> numbers = new HashMap<>();
        for (Job job : jobs) {
            AssetTag tag = job.machine().tag();
            byTag.put(tag, job);
            moves.put(tag, workshop.moves(tag));
            numbers.put(tag, workshop.number(tag));
        }
        List<Leftover> leftovers = heaps.entrySet().stream()
                .map(heap -> new Leftover(
                        heap.getKey().content(), heap.getValue(), heap.getKey().origin(), heap.getKey().to()))
                .toList();
        return new Expansion(byTag, moves, numbers, leftovers, workshop.rings());
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

    /** The tags of opened machines, first ones first. */
    List<AssetTag> inWorkOrder() {
        return numbers.entrySet().stream()
                .filter(number -> number.getValue() > 0)
                .sorted(Map.Entry.comparingByValue())
                .map(Map.Entry::getKey)
                .toList();
    }

    /** Who pays for a machine: the budget that limits it, else as the inventory says. */
    String costCentre(AssetTag tag) {
        Job job = jobs.get(tag);
        String limited = job.options().group().costCentre();
        return limited.isEmpty() ? job.machine().costCentre().strip() : limited;
    }

    /** Says where a module goes that nobody needs. */
    private static Heap heap(Unit unit, List<JudgedBoard> boards) {
        Station to = isUseful(unit.content(), boards) ? new Station.OnShelf() : new Station.Disposal();
        unit.goesTo(to);
        return new Heap(unit.content(), Leftover.Origin.PULLED, to);
    }

    /** A module is worth keeping where some board of the fleet takes it or might take it; a filler is hard to get. */
    private static boolean isUseful(SlotContent content, List<JudgedBoard> boards) {
        return content.module().isEmpty()
                || boards.stream().anyMatch(board -> board.fit(content.module().get()) != Fit.BLOCKED);
    }
}
