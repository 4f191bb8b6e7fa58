package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
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
    private final Map<Candidate, Population> populations = new IdentityHashMap<>();

    public PlanWriter(PlanRequest request, Stock stock, Expansion expansion, Purchases purchases) {
        this.request = request;
        this.policy = request.policy();
        this.stock = stock;
        this.expansion = expansion;
        this.purchases = purchases;
    }

    /** What it all costs. */
    public Spending spending() {
        Money labour = request.fleet().machines().stream()
                .map(machine -> labour(job(machine)))
                .reduce(Money.zero(policy.currency()), Money::plus);
        return Costs.of(purchases.lines(), request.market().suppliers(), policy.buying().tax(), labour);
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
        List<MachinePlan> machines = new ArrayList<>();
        for (Machine machine : request.fleet().machines()) {
            machines.add(machine(job(machine), obstacles));
        }
        return new Plan(
                request.title(), request.date(), policy, machines, purchases.lines(), leftovers, spending,
                optimality(machines, spending, proof), remarks, request.choices(), Insights.NONE);
    }

    private Job job(Machine machine) {
        return expansion.jobs().get(machine.tag());
    }

    private Money labour(Job job) {
        return new Money(PlanModel.labour(policy, job.candidate()), policy.currency());
    }

    private MachinePlan machine(Job job, Obstacles obstacles) throws PlannerException {
        boolean isBelow = job.options().group().target().isPresent() && !job.candidate().onTarget();
        Optional<Obstacle> obstacle = isBelow ? Optional.of(obstacles.of(job.options())) : Optional.empty();
        return new MachinePlan(
                job.machine(),
                policy.target(job.machine().role()),
                after(job),
                outcome(job),
                expansion.moves().get(job.machine().tag()),
                job.options().unchanged().runs(),
                job.candidate().runs(),
                obstacle,
                labour(job),
                expansion.numbers().get(job.machine().tag()));
    }

    /** One object for all machines that get the same: a large fleet has many of them. */
    private Population after(Job job) {
        return job.isOpened()
                ? populations.computeIfAbsent(job.candidate(), Candidate::after) : job.machine().population();
    }

    private static Outcome outcome(Job job) {
        Options options = job.options();
        if (options.group().leaveAlone()) {
            return Outcome.LEFT_ALONE;
        }
        if (options.group().target().isEmpty()) {
            return Outcome.NO_TARGET;
        }
        boolean reaches = job.candidate().onTarget();
        if (job.isOpened() && !reaches) {
            boolean isMore = job.candidate().after().total().compareTo(options.group().now().total()) > 0;
            return isMore ? Outcome.IMPROVED : Outcome.NOT_HELPED;
        }
        if (options.isOnTargetNow()) {
            return job.isOpened() ? Outcome.DONOR : Outcome.ON_TARGET;
        }
        return job.isOpened() ? Outcome.REACHES_TARGET : Outcome.NOT_HELPED;
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
        long onTarget = machines.stream()
                .filter(machine -> machine.target().isPresent() && machine.obstacle().isEmpty())
                .mapToLong(machine -> machine.target().get().weight())
                .sum();
        long possible = machines.stream().flatMap(machine -> machine.target().stream()).mapToLong(Target::weight).sum();
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
