package slotledger.model.proof;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.unit.Money;
import slotledger.model.work.Job;

/**
 * How a plan ended.
 *
 * @param date    the day of the report
 * @param order   the plan and its order
 * @param jobs    in the order of work
 * @param closing the proof; empty where no inventory was taken yet
 */
public record CloseOut(LocalDate date, OrderStatus order, List<Job> jobs, Optional<ClosingProof> closing) {

    public CloseOut {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(order, "order");
        jobs = List.copyOf(jobs);
        Objects.requireNonNull(closing, "closing");
    }

    /**
     * What an order line cost and what came of it.
     *
     * @param ordered the line's total
     * @param arrived the share of what arrived as ordered, rounded down to the smallest coin
     * @param claim   the rest: what is missing, wrong or dead
     */
    public record LineMoney(OrderStatus.Line line, Money ordered, Money arrived, Money claim) {
    }

    /**
     * Machines of one role that have a target.
     *
     * @param machines how many
     * @param before   on target before the work
     * @param planned  on target after it by the plan
     * @param proved   on target after it by the proof
     * @param unknown  of which nobody knows, because they were not seen
     */
    public record RoleCount(String role, int machines, int before, int planned, int proved, int unknown) {
    }

    public Plan plan() {
        return order.plan();
    }

    public List<LineMoney> money() {
        List<LineMoney> money = new ArrayList<>();
        for (OrderStatus.Line line : order.lines()) {
            Money total = line.purchase().total();
            long good = Math.min(line.good(), line.purchase().modules());
            Money arrived = new Money(total.minor() * good / line.purchase().modules(), total.currency());
            money.add(new LineMoney(line, total, arrived, total.minus(arrived)));
        }
        return List.copyOf(money);
    }

    /** By role, in alphabetical order. */
    public List<RoleCount> roles() {
        Map<AssetTag, ProofOutcome> ends = ends();
        Map<String, RoleCount> roles = new TreeMap<>();
        for (MachinePlan machine : plan().machines()) {
            if (machine.target().isEmpty() || machine.outcome() == Outcome.LEFT_ALONE) {
                continue;
            }
            boolean before = machine.outcome() == Outcome.ON_TARGET || machine.outcome() == Outcome.DONOR;
            boolean planned = before || machine.outcome() == Outcome.REACHES_TARGET;
            ProofOutcome end = ends.getOrDefault(machine.machine().tag(), ProofOutcome.NOT_SEEN);
            boolean stands = end == ProofOutcome.DONE || end == ProofOutcome.DONE_DIFFERENTLY;
            RoleCount one = new RoleCount(machine.machine().role(), 1, before ? 1 : 0, planned ? 1 : 0,
                    planned && stands || before && end == ProofOutcome.NOT_DONE ? 1 : 0,
                    end == ProofOutcome.NOT_SEEN ? 1 : 0);
            roles.merge(one.role(), one, CloseOut::sum);
        }
        return List.copyOf(roles.values());
    }

    private static RoleCount sum(RoleCount one, RoleCount other) {
        return new RoleCount(one.role(), one.machines() + other.machines(), one.before() + other.before(),
                one.planned() + other.planned(), one.proved() + other.proved(), one.unknown() + other.unknown());
    }

    /** All roles together. */
    public RoleCount all() {
        return roles().stream().reduce(new RoleCount("", 0, 0, 0, 0, 0), CloseOut::sum);
    }

    /** How each machine ended that the proof looked at. */
    public Map<AssetTag, ProofOutcome> ends() {
        Map<AssetTag, ProofOutcome> ends = new HashMap<>();
        closing.ifPresent(found -> found.proof().machines()
                .forEach(machine -> ends.put(machine.plan().machine().tag(), machine.outcome())));
        return ends;
    }
}
