package slotledger.planner.internal.why;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.IntPredicate;
import java.util.stream.IntStream;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.choice.Amounts;
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
     * @param opened machines that are opened in all then
     */
    public record Change(Map<Limit, Long> excess, long order, long opened) {
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

    /** Of what there may be more. How much money the order takes is of interest only where that is money. */
    private enum More {
        MONEY, PIECES;

        boolean eases(Limit limit) {
            return (limit.of() == Limit.Of.PIECES) == (this == PIECES);
        }
    }

    /** All that the answer for a class hangs on: classes of several boards often take and free the same. */
    private record Asked(More more, String costCentre, List<Integer> fitting, List<List<Amounts>> ways) {
    }

    /** The programmes are small; this many nodes are plenty. */
    private static final int NODES = 2_000;

    private final PlanRequest request;
    private final PlanRequest uniform;
    private final Stock stock;
    private final Choice choice;
    private final Rest everything;
    private final long openedInAll;
    private final MilpSolver solver;
    private final Map<Asked, Optional<Change>> known = new HashMap<>();

    public Freeing(PlanRequest request, Stock stock, Choice choice, MilpSolver solver) {
        this.request = new PlanRequest(request.title(), request.fleet(), request.market(), request.shelf(),
                request.policy(), request.date());
        this.uniform = this.request.with(
                new Choices(List.of(), List.of(), request.choices().uniform(), OptionalInt.empty()));
        this.stock = stock;
        this.choice = choice;
        this.everything = new Rest(choice);
        this.openedInAll = opened(group -> true);
        this.solver = solver;
    }

    /** How much more money is the least, with the stock there is; empty where no money buys it. */
    Optional<Change> money(Options options) throws PlannerException {
        return least(options, More.MONEY);
    }

    /** Which modules are lacking, as few as can be, within the budgets there are. */
    Optional<Change> pieces(Options options) throws PlannerException {
        return least(options, More.PIECES);
    }

    private Optional<Change> least(Options options, More more) throws PlannerException {
        Asked asked = new Asked(more, options.group().costCentre(), options.fitting(),
                Rest.onTarget(options).stream().map(each -> List.of(each.used(), each.freed())).distinct().toList());
        Optional<Change> change = known.get(asked);
        if (change == null) {
            PlanModel model = new PlanModel(request, stock, everything.beside(options, Rest.onTarget(options)));
            change = least(model, openedInAll, more);
            known.put(asked, change);
        }
        return change;
    }

    /** How much more money is the least to bring a class on target together with all of its uniform room. */
    Optional<Change> money(UniformRoom room) throws PlannerException {
        return least(room, More.MONEY);
    }

    /** Which modules are lacking for a class and all of its uniform room, within the budgets there are. */
    Optional<Change> pieces(UniformRoom room) throws PlannerException {
        return least(room, More.PIECES);
    }

    private Optional<Change> least(UniformRoom room, More more) throws PlannerException {
        PlanModel model = new PlanModel(
                uniform, stock, new Rest(choice, group -> !room.has(group)).beside(room.onTarget()));
        return least(model, opened(group -> !room.has(group)), more);
    }

    /** The room of a class in a uniform room, where its machines can have something in common. */
    Optional<UniformRoom> room(Options options) {
        return UniformRoom.of(choice.options(), options);
    }

    /** Machines of some classes that are opened by the plan. */
    private long opened(IntPredicate wanted) {
        return IntStream.range(0, choice.options().size()).filter(wanted)
                .mapToLong(group -> opened(choice, group)).sum();
    }

    private static long opened(Choice choice, int group) {
        List<Candidate> candidates = choice.options().get(group).candidates();
        return IntStream.range(0, candidates.size()).filter(i -> candidates.get(i).opens())
                .mapToLong(i -> choice.count(group, i)).sum();
    }

    /** With so many machines opened that the programme doesn't open itself. */
    private Optional<Change> least(PlanModel model, long others, More more)
            throws PlannerException {
        Eased eased = new Eased(model, more::eases);
        List<Goal> goals = new ArrayList<>(List.of(new Goal("looking for what binds", eased.all(), NODES)));
        if (more == More.MONEY) {
            goals.add(new Goal("looking for the least money", model.againstBudget(), NODES));
        }
        return FreshSearch.minimise(solver, eased.programme(), goals, Progress.NONE)
                .map(steps -> steps.get(steps.size() - 1).values())
                .map(values -> new Change(eased.excess(values), model.againstBudget().of(values),
                        others + opened(model, values)));
    }

    private static long opened(PlanModel model, long[] values) {
        Choice changed = model.choice(Arrays.copyOf(values, model.programme().size()));
        return IntStream.range(0, changed.options().size()).mapToLong(group -> opened(changed, group)).sum();
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
