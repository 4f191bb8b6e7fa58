package slotledger.model.plan;

import java.time.LocalDate;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Policy;

/**
 * For each machine its population after the work and the moves that lead there; what to buy, what is left over, what
 * can't be done and why.
 *
 * @param title      name of the project
 * @param date       day for which offers and prices were looked at
 * @param policy     what was wanted
 * @param machines   every machine of the fleet, in inventory order
 * @param purchases  order lines, by supplier and part
 * @param leftovers  modules nobody needs after the work
 * @param spending   what it costs
 * @param optimality how far from the best plan it can be
 * @param remarks    what a reader must know
 * @param choices    what people decided beforehand
 * @param insights   what the plan is worth and what binds it
 */
public record Plan(
        String title,
        LocalDate date,
        Policy policy,
        List<MachinePlan> machines,
        List<Purchase> purchases,
        List<Leftover> leftovers,
        Spending spending,
        Optimality optimality,
        List<Finding> remarks,
        Choices choices,
        Insights insights) {

    public Plan {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(policy, "policy");
        machines = List.copyOf(machines);
        purchases = List.copyOf(purchases);
        leftovers = List.copyOf(leftovers);
        Objects.requireNonNull(spending, "spending");
        Objects.requireNonNull(optimality, "optimality");
        remarks = List.copyOf(remarks);
        Objects.requireNonNull(choices, "choices");
        Objects.requireNonNull(insights, "insights");
    }

    /** A plan for which people decided nothing beforehand, without insights. */
    public Plan(
            String title,
            LocalDate date,
            Policy policy,
            List<MachinePlan> machines,
            List<Purchase> purchases,
            List<Leftover> leftovers,
            Spending spending,
            Optimality optimality,
            List<Finding> remarks) {
        this(title, date, policy, machines, purchases, leftovers, spending, optimality, remarks, Choices.NONE,
                Insights.NONE);
    }

    public Plan withInsights(Insights found) {
        return new Plan(title, date, policy, machines, purchases, leftovers, spending, optimality, remarks, choices,
                found);
    }

    public Optional<MachinePlan> find(AssetTag tag) {
        return machines.stream().filter(plan -> plan.machine().tag().equals(tag)).findFirst();
    }

    /** Machines somebody opens, in the order of work. */
    public List<MachinePlan> work() {
        return machines.stream()
                .filter(MachinePlan::isOpened)
                .sorted(Comparator.comparingInt(MachinePlan::workOrder))
                .toList();
    }

    public long count(Outcome outcome) {
        return machines.stream().filter(plan -> plan.outcome() == outcome).count();
    }
}
