package slotledger.planner.internal.why;

import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.function.Predicate;
import slotledger.model.task.Progress;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.milp.Lexicographic.Goal;
import slotledger.planner.internal.model.Choice;
import slotledger.planner.internal.model.Limit;
import slotledger.planner.internal.model.PlanModel;
import slotledger.solver.MilpSolver;

/**
 * The least change of money or stock that would bring one more machine on target, while all others get the populations
 * of the plan. The order is made anew for it, so that packs, price steps, delivery and spares count as they are.
 */
public final class Freeing {

    /**
     * What would have to be different.
     *
     * @param excess by how much limits are too small, in minor units or pieces; empty where none is
     * @param order  minor units that the whole order then takes of a budget
     */
    public record Change(Map<Limit, Long> excess, long order) {
        public Change {
            Objects.requireNonNull(excess, "excess");
        }
    }

    /**
     * What a whole order comes to, in minor units.
     *
     * @param payable       goods and delivery
     * @param againstBudget what a budget counts of it
     */
    public record Order(long payable, long againstBudget) {
    }

    /** The programmes are small; this many nodes are plenty. */
    private static final int NODES = 2_000;

    private final PlanRequest request;
    private final Stock stock;
    private final Choice choice;
    private final MilpSolver solver;

    public Freeing(PlanRequest request, Stock stock, Choice choice, MilpSolver solver) {
        this.request = new PlanRequest(request.title(), request.fleet(), request.market(), request.shelf(),
                request.policy(), request.date());
        this.stock = stock;
        this.choice = choice;
        this.solver = solver;
    }

    /** How much more money is the least, with the stock there is; empty where no money buys it. */
    Optional<Change> money(Options options) throws PlannerException {
        return least(options, limit -> limit.of() != Limit.Of.PIECES);
    }

    /** Which modules are lacking, as few as can be, within the budgets there are. */
    Optional<Change> pieces(Options options) throws PlannerException {
        return least(options, limit -> limit.of() == Limit.Of.PIECES);
    }

    private Optional<Change> least(Options options, Predicate<Limit> mayBeExceeded) throws PlannerException {
        PlanModel model = new PlanModel(
                request, stock, new Rest(choice).beside(options, Rest.onTarget(options)));
        Eased eased = new Eased(model, mayBeExceeded);
        List<Goal> goals = List.of(
                new Goal("looking for what binds", eased.all(), NODES),
                new Goal("looking for the least money", model.againstBudget(), NODES));
        return FreshSearch.minimise(solver, eased.programme(), goals, Progress.NONE)
                .map(steps -> new Change(eased.excess(steps.get(1).values()), steps.get(1).value()));
    }

    /**
     * The whole order when one machine ends with another population than planned, and all others as
     * planned; empty where stock or money doesn't reach.
     */
    public Optional<Order> order(Options options, Candidate planned, Candidate other) throws PlannerException {
        PlanModel model = new PlanModel(
                request, stock, new Rest(choice).without(options, planned).beside(options, List.of(other)));
        List<Goal> goals = List.of(new Goal("looking for the least money", model.payable(), NODES));
        return FreshSearch.minimise(solver, model.programme(), goals, Progress.NONE)
                .map(steps -> new Order(
                        steps.get(0).value(), model.againstBudget().of(steps.get(0).values())));
    }
}
