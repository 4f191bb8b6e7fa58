package slotledger.planner.internal.insight;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.TreeMap;
import java.util.function.Consumer;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.task.Progress;
import slotledger.model.unit.Money;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Listed;
import slotledger.planner.internal.milp.PriceSweep;
import slotledger.planner.internal.milp.PriceSweep.Sample;
import slotledger.planner.internal.model.PlanModel;
import slotledger.solver.LinearSolver;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/**
 * Plans for round budgets, found from prices for a weighted machine below target instead of by a search each, and a
 * bound of what any plan could do with the same money. Prices are first sought near the asked budget, then where the
 * curve is least known.
 */
final class CurveByPrices {

    /** More prices than these move the bound by less than whole machines. */
    private static final int MOST_PRICES = 24;
    private static final int NEAR_ASKED = 4;
    /** A budget is asked for more machines before less money: the price of a miss is raised so many times. */
    private static final long STRESS = 16;
    /** Minor units; doubles still hold it exactly. */
    private static final long UNLIMITED = 1L << 50;

    private final Listed listed;
    private final PlanModel model;
    private final MilpSolver solver;
    private final Optional<Money> asked;
    private final TreeMap<Long, Sample> byPrice = new TreeMap<>();
    private final TreeMap<Long, long[]> found = new TreeMap<>();
    private final CurveFigures figures;

    CurveByPrices(MilpSolver solver, Listed request) {
        this.solver = solver;
        listed = request.withBudget(Optional.empty());
        asked = request.request().policy().budget();
        model = new PlanModel(listed.request(), listed.stock(), listed.options());
        figures = new CurveFigures(model, listed, byPrice.values());
    }

    /** The curve, with about so many points; told after each. */
    BudgetCurve sweep(LinearSolver linear, int points, Consumer<BudgetCurve> soFar, Progress progress)
            throws PlannerException {
        long dearest = figures.dearest();
        try {
            PriceSweep sweep = new PriceSweep(
                    solver, linear, model.programme(), model.againstBudget(), model.missed());
            return new Run(sweep, points, soFar, progress).curve(dearest);
        } catch (SolverException e) {
            throw new PlannerException(e.getMessage(), e);
        }
    }

    private final class Run {

        private final PriceSweep sweep;
        private final int points;
        private final Consumer<BudgetCurve> soFar;
        private final Progress progress;

        Run(PriceSweep sweep, int points, Consumer<BudgetCurve> soFar, Progress progress) {
            this.sweep = sweep;
            this.points = points;
            this.soFar = soFar;
            this.progress = progress;
        }

        BudgetCurve curve(long dearest) throws SolverException, PlannerException {
            begin(dearest);
            long largest = found.lastKey();
            SortedSet<Long> open = CurveSweep.budgets(largest, points);
            open.remove(largest);
            asked.map(Money::minor).filter(budget -> budget != largest).ifPresent(open::add);
            int count = open.size();
            int prices = Math.min(MOST_PRICES, Math.max(NEAR_ASKED, points));
            for (int i = 0; i < NEAR_ASKED && asked.isPresent(); i++) {
                price(Optional.of(asked.get().minor()));
            }
            while (!open.isEmpty()) {
                progress.check();
                progress.step("curve of budgets", (count - open.size()) / (double) count);
                boolean isAsked = asked.isPresent() && open.contains(asked.get().minor());
                if (!isAsked && byPrice.size() < prices) {
                    price(Optional.empty());
                }
                long next = isAsked ? asked.get().minor() : CurveSweep.inWidestGap(open, found.navigableKeySet());
                open.remove(next);
                find(next);
                soFar.accept(told());
            }
            return told();
        }

        /** Nothing, and all that money is good for. */
        private void begin(long dearest) throws SolverException, PlannerException {
            progress.check();
            long[] nothing = model.nothingDone();
            if (model.programme().broken(nothing).isEmpty()) {
                found.put(0L, nothing);
                soFar.accept(told());
            }
            Sample all = sweep.at(dearest, progress);
            byPrice.put(dearest, all);
            byPrice.put(1L, sweep.at(1, progress));
            Optional<long[]> most = sweep.round(
                    List.of(all), Optional.empty(), UNLIMITED, dearest, progress);
            long[] values = most.or(() -> Optional.ofNullable(found.isEmpty() ? null : nothing))
                    .orElseThrow(() -> new PlannerException("No plan was found that keeps all that is decided. Plan"
                            + " without --budget to see why."));
            found.put(model.againstBudget().of(values), values);
            soFar.accept(told());
        }

        /** Asks the price of the line between two samples: around a budget, or where the curve is least known. */
        private void price(Optional<Long> budget) throws SolverException {
            Sample before = new Sample(0, 0, 0, model.missed().of(model.nothingDone()), new double[0]);
            long chosen = 0;
            double widest = 0;
            for (Sample each : byPrice.values()) {
                double money = each.money() - before.money();
                double misses = before.missed() - each.missed();
                boolean isAround = budget.isEmpty()
                        || budget.get() >= before.money() && budget.get() <= each.money();
                long line = money > 0 && misses > 0 ? (long) Math.ceil(money / misses) : 0;
                if (isAround && line > 0 && money * misses > widest && !byPrice.containsKey(line)) {
                    widest = money * misses;
                    chosen = line;
                }
                before = each;
            }
            if (chosen > 0) {
                byPrice.put(chosen, sweep.at(chosen, progress));
            }
        }

        /** Looks for values with so much money, near the samples on both sides and near what is found for less. */
        private void find(long budget) {
            List<Sample> near = new ArrayList<>();
            byPrice.values().stream().filter(each -> each.money() <= budget).reduce((one, other) -> other)
                    .ifPresent(near::add);
            byPrice.values().stream().filter(each -> each.money() > budget).findFirst().ifPresent(near::add);
            Map.Entry<Long, long[]> known = found.floorEntry(budget);
            long price = Math.multiplyExact(near.get(near.size() - 1).price(), STRESS);
            Optional<long[]> values = sweep.round(
                    near, Optional.ofNullable(known).map(Map.Entry::getValue), budget, price, progress);
            values.or(() -> Optional.ofNullable(known).map(Map.Entry::getValue))
                    .ifPresent(each -> found.put(budget, each));
        }
    }

    private BudgetCurve told() {
        return figures.curve(found, asked);
    }
}
