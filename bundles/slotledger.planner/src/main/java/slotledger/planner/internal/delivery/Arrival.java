package slotledger.planner.internal.delivery;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Receipt;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;
import slotledger.model.task.Progress;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.milp.Lexicographic;
import slotledger.planner.internal.order.SlotChanges;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/**
 * Decides which machines of a plan can be done with what arrived. Machines that take and give the same and count as
 * much are one number in the programme; for each kind no more is taken than is there and is pulled.
 */
public final class Arrival {

    private static final int MOST_NODES = 10_000;

    private record Alike(Map<Piece, Integer> takes, Map<Piece, Integer> gives, int weight, boolean donor) {
    }

    private final Plan plan;
    private final Receipts receipts;
    private final Set<AssetTag> done;
    private final Map<Piece, Integer> there = new LinkedHashMap<>();

    public Arrival(Plan plan, List<Receipt> receipts, Set<AssetTag> done) throws PlannerException {
        this.plan = plan;
        this.receipts = new Receipts(plan, receipts);
        this.done = new LinkedHashSet<>(done);
        shelf(plan).forEach((piece, count) -> there.merge(piece, count, Integer::sum));
        this.receipts.lines().forEach(line ->
                there.merge(line.purchase().offer().piece(), line.usable(), Integer::sum));
        for (MachinePlan machine : plan.work()) {
            if (done.contains(machine.machine().tag())) {
                SlotChanges changes = SlotChanges.of(machine.before(), machine.after());
                takes(changes).forEach((piece, count) -> there.merge(piece, -count, Integer::sum));
                gives(changes).forEach((piece, count) -> there.merge(piece, count, Integer::sum));
            }
        }
        for (Map.Entry<Piece, Integer> piece : there.entrySet()) {
            if (piece.getValue() < 0) {
                throw new PlannerException(("The machines that are done took %d more of %s than arrived, was on the"
                        + " shelf or was pulled. Correct the list of what arrived or of what is done.")
                        .formatted(-piece.getValue(), piece.getKey()));
            }
        }
    }

    /** What the plan found on the shelf: what it takes from there, and what it leaves there. */
    private static Map<Piece, Integer> shelf(Plan plan) {
        Map<Piece, Integer> shelf = new LinkedHashMap<>();
        for (MachinePlan machine : plan.machines()) {
            for (Move move : machine.moves()) {
                if (move.from() instanceof Station.OnShelf) {
                    move.content().piece().ifPresent(piece -> shelf.merge(piece, 1, Integer::sum));
                }
            }
        }
        plan.leftovers().stream().filter(leftover -> leftover.origin() == Leftover.Origin.SHELF)
                .forEach(leftover -> leftover.content().piece()
                        .ifPresent(piece -> shelf.merge(piece, leftover.count(), Integer::sum)));
        return shelf;
    }

    private static Map<Piece, Integer> takes(SlotChanges changes) {
        return count(changes.in());
    }

    private Map<Piece, Integer> gives(SlotChanges changes) {
        return plan.policy().reusePulled() ? count(changes.out()) : Map.of();
    }

    private static Map<Piece, Integer> count(Map<String, SlotContent> contents) {
        Map<Piece, Integer> counts = new LinkedHashMap<>();
        contents.values().forEach(content -> content.piece()
                .ifPresent(piece -> counts.merge(piece, 1, Integer::sum)));
        return counts;
    }

    /** What is to be had beside what machines give: what arrived and is on the shelf, less what the done ones took. */
    public Map<Piece, Integer> there() {
        return Collections.unmodifiableMap(there);
    }

    /** Picks the machines, and gives each what it takes. */
    public Delivery allot(MilpSolver solver, Progress progress) throws PlannerException {
        Map<Alike, List<MachinePlan>> groups = new LinkedHashMap<>();
        for (MachinePlan machine : plan.work()) {
            if (!done.contains(machine.machine().tag())) {
                SlotChanges changes = SlotChanges.of(machine.before(), machine.after());
                int weight = machine.outcome() == Outcome.REACHES_TARGET
                        ? machine.target().map(target -> target.weight()).orElse(0) : 0;
                groups.computeIfAbsent(new Alike(takes(changes), gives(changes), weight,
                        machine.outcome() == Outcome.DONOR), unused -> new ArrayList<>()).add(machine);
            }
        }
        long[] picked = pick(groups, solver, progress);
        Set<AssetTag> ready = new LinkedHashSet<>();
        int group = 0;
        for (List<MachinePlan> machines : groups.values()) {
            machines.subList(0, Math.toIntExact(picked[group++]))
                    .forEach(machine -> ready.add(machine.machine().tag()));
        }
        List<Delivery.Waiting> waiting = new ArrayList<>();
        groups.values().stream().flatMap(List::stream)
                .filter(machine -> !ready.contains(machine.machine().tag()))
                .sorted((one, other) -> Integer.compare(one.workOrder(), other.workOrder()))
                .forEach(machine -> waiting.add(waiting(machine)));
        Plan now = new PlanNow(plan, receipts.lines(), done, ready, there).plan();
        new AllotmentAudit(there, receipts.lines()).check(now);
        return new Delivery(receipts.lines(), List.copyOf(done), now, waiting, receipts.findings());
    }

    private static Delivery.Waiting waiting(MachinePlan machine) {
        Map<SlotContent, Integer> needs = new LinkedHashMap<>();
        takes(SlotChanges.of(machine.before(), machine.after()))
                .forEach((piece, count) -> needs.put(SlotContent.of(piece), count));
        return new Delivery.Waiting(machine.machine().tag(), needs);
    }

    private long[] pick(Map<Alike, List<MachinePlan>> groups, MilpSolver solver, Progress progress)
            throws PlannerException {
        IntegerProgramme programme = new IntegerProgramme();
        Map<Piece, Linear> rows = new LinkedHashMap<>();
        Linear weight = new Linear();
        Linear machines = new Linear();
        Linear opened = new Linear();
        for (Map.Entry<Alike, List<MachinePlan>> group : groups.entrySet()) {
            int variable = programme.variable("done now " + programme.size(), 0, group.getValue().size());
            group.getKey().takes().forEach((piece, count) ->
                    rows.computeIfAbsent(piece, unused -> new Linear()).add(variable, count));
            group.getKey().gives().forEach((piece, count) ->
                    rows.computeIfAbsent(piece, unused -> new Linear()).add(variable, -count));
            weight.add(variable, -group.getKey().weight());
            machines.add(variable, group.getKey().donor() ? 0 : -1);
            opened.add(variable, 1);
        }
        if (groups.isEmpty()) {
            return new long[0];
        }
        rows.forEach((piece, sum) -> programme.atMost(piece.toString(), sum, there.getOrDefault(piece, 0)));
        List<Lexicographic.Goal> goals = List.of(
                new Lexicographic.Goal("most targets with what arrived", weight, MOST_NODES),
                new Lexicographic.Goal("most machines with what arrived", machines, MOST_NODES),
                new Lexicographic.Goal("least work", opened, MOST_NODES));
        try {
            Lexicographic.Answer answer = new Lexicographic(solver)
                    .minimise(programme, goals, new long[groups.size()], progress);
            if (answer.isCut()) {
                progress.check();
            }
            return answer.values();
        } catch (SolverException problem) {
            throw new PlannerException(problem.getMessage(), problem);
        }
    }
}
