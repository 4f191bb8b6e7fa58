package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.IntStream;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.plan.Insights;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Spending;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Target;
import slotledger.model.unit.Money;
import slotledger.model.verdict.Operation;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.model.PlanModel;
import slotledger.planner.internal.model.Tastes;
import slotledger.planner.internal.why.BoardObstacles;
import slotledger.planner.internal.why.Freeing;
import slotledger.planner.internal.why.Obstacles;
import slotledger.planner.internal.why.SupplyObstacles;
import slotledger.planner.internal.why.WhatIsLeft;
import slotledger.solver.MilpSolution;

/** Writes what was decided as a plan. */
public final class PlanWriter {

    /**
     * What the solver proved.
     *
     * @param missed     weighted machines below target that could be helped
     * @param cost       goods, delivery and labour, minor units
     * @param missedSafe bound of what is missed that exact arithmetic alone proves
     * @param costSafe   bound of the cost that exact arithmetic alone proves
     * @param solver     who found it
     * @param limits     what the search left out
     * @param isCut      whether the user stopped the search
     */
    public record Proof(
            MilpSolution missed,
            MilpSolution cost,
            long missedSafe,
            long costSafe,
            String solver,
            List<String> limits,
            boolean isCut) {
        public Proof {
            Objects.requireNonNull(missed, "missed");
            Objects.requireNonNull(cost, "cost");
            Objects.requireNonNull(solver, "solver");
            limits = List.copyOf(limits);
        }
    }

    private final PlanRequest request;
    private final Policy policy;
    private final Stock stock;
    private final Expansion expansion;
    private final Purchases purchases;
    private final Map<Assignment, Shared> shared = new IdentityHashMap<>();
    private final Map<String, Optional<Target>> targets = new HashMap<>();

    /**
     * What is the same for all machines that get the same: a large fleet has many of them.
     *
     * @param after empty where the machine isn't opened
     */
    private record Shared(
            Optional<Population> after, Outcome outcome, Operation now, Operation then, Optional<Obstacle> obstacle,
            Money labour) {
    }

    public PlanWriter(PlanRequest request, Stock stock, Expansion expansion, Purchases purchases) {
        this.request = request;
        this.policy = request.policy();
        this.stock = stock;
        this.expansion = expansion;
        this.purchases = purchases;
    }

    /** What it all costs. */
    public Spending spending() {
        long labour = 0;
        for (int machine = 0; machine < expansion.machines().size(); machine++) {
            labour = Math.addExact(labour, PlanModel.labour(policy, expansion.assignment(machine).candidate()));
        }
        return Costs.of(purchases.lines(), request.market().suppliers(), policy.buying().tax(),
                new Money(labour, policy.currency()));
    }

    /** The plan. */
    public Plan write(List<Leftover> leftovers, Proof proof, Freeing freeing, List<Finding> remarks)
            throws PlannerException {
        Spending spending = spending();
        WhatIsLeft left =
                new WhatIsLeft(stock, spending, purchases.lines(), leftovers, policy.reusePulled());
        Obstacles obstacles =
                new Obstacles(new BoardObstacles(stock), new SupplyObstacles(
                        stock, policy, request.choices().mostOpened(), left, freeing));
        int size = expansion.machines().size();
        for (int machine = 0; machine < size; machine++) {
            Assignment assignment = expansion.assignment(machine);
            if (!shared.containsKey(assignment)) {
                shared.put(assignment, shared(assignment, obstacles));
            }
            targets.computeIfAbsent(expansion.machines().get(machine).role(), policy::target);
        }
        List<MachinePlan> machines = IntStream.range(0, size).parallel().mapToObj(this::machine).toList();
        return new Plan(
                request.title(), request.date(), policy, machines, purchases.lines(), leftovers, spending,
                optimality(machines, spending, proof), remarks, request.choices(), Insights.NONE);
    }

    private Shared shared(Assignment assignment, Obstacles obstacles) throws PlannerException {
        Options options = assignment.options();
        Candidate candidate = assignment.candidate();
        boolean isBelow = options.group().target().isPresent() && !candidate.onTarget();
        return new Shared(
                assignment.isOpened() ? Optional.of(candidate.after()) : Optional.empty(),
                outcome(assignment),
                options.unchanged().runs(),
                candidate.runs(),
                isBelow ? Optional.of(obstacles.of(options)) : Optional.empty(),
                new Money(PlanModel.labour(policy, candidate), policy.currency()));
    }

    private MachinePlan machine(int number) {
        Machine machine = expansion.machines().get(number);
        Shared same = shared.get(expansion.assignment(number));
        return new MachinePlan(
                machine,
                targets.get(machine.role()),
                same.after().orElse(machine.population()),
                same.outcome(),
                expansion.moves(number),
                same.now(),
                same.then(),
                same.obstacle(),
                same.labour(),
                expansion.turn(number));
    }

    private static Outcome outcome(Assignment assignment) {
        Options options = assignment.options();
        if (options.group().leaveAlone()) {
            return Outcome.LEFT_ALONE;
        }
        if (options.group().target().isEmpty()) {
            return Outcome.NO_TARGET;
        }
        boolean reaches = assignment.candidate().onTarget();
        if (assignment.isOpened() && !reaches) {
            boolean isMore = assignment.candidate().after().total().compareTo(options.group().now().total()) > 0;
            return isMore ? Outcome.IMPROVED : Outcome.NOT_HELPED;
        }
        if (options.isOnTargetNow()) {
            return assignment.isOpened() ? Outcome.DONOR : Outcome.ON_TARGET;
        }
        return assignment.isOpened() ? Outcome.REACHES_TARGET : Outcome.NOT_HELPED;
    }

    private List<String> limits(Proof proof, Money worth) {
        List<String> limits = new ArrayList<>(proof.limits());
        if (!worth.isZero()) {
            limits.add(("Where plans are compared, what is preferred counts as cheaper by its worth; that is %s"
                    + " in this plan.").formatted(worth));
        }
        return limits;
    }

    private Optimality optimality(List<MachinePlan> machines, Spending spending, Proof proof) {
        long onTarget = 0;
        long possible = 0;
        for (MachinePlan machine : machines) {
            long weight = machine.target().map(Target::weight).orElse(0);
            possible += weight;
            onTarget += machine.obstacle().isEmpty() ? weight : 0;
        }
        Money worth = new Money(Tastes.worth(request.choices(), purchases.lines()), spending.total().currency());
        Money counted = spending.total().minus(worth);
        long bound = Math.min(counted.minor(), proof.cost().bound());
        return new Optimality(
                onTarget,
                Math.min(possible, onTarget + proof.missed().value() - proof.missed().bound()),
                counted,
                new Money(bound, counted.currency()),
                Math.min(possible, onTarget + proof.missed().value() - proof.missedSafe()),
                new Money(Math.min(bound, proof.costSafe()), counted.currency()),
                proof.solver(),
                limits(proof, worth),
                proof.isCut());
    }
}
