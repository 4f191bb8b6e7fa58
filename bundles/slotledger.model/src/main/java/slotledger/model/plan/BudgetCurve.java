package slotledger.model.plan;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.unit.Money;

/**
 * Budget against weighted machines on target: the best plan for each of several budgets.
 *
 * @param points     ascending by budget; a larger budget never brings fewer weighted machines on target
 * @param asked      the budget of the policy; empty where it sets none
 * @param withTarget weighted machines with a target, whether they can be helped or not
 */
public record BudgetCurve(List<Point> points, Optional<Money> asked, long withTarget) {

    public BudgetCurve {
        points = List.copyOf(points);
        Objects.requireNonNull(asked, "asked");
        for (int i = 1; i < points.size(); i++) {
            Point before = points.get(i - 1);
            Point point = points.get(i);
            if (before.budget().compareTo(point.budget()) >= 0
                    || before.figures().weight() > point.figures().weight()) {
                throw new IllegalArgumentException("The points at %s and %s must ascend."
                        .formatted(before.budget(), point.budget()));
            }
        }
    }

    /**
     * The best plan for one budget.
     *
     * @param budget  for goods and delivery
     * @param figures of the plan that is made with this budget
     */
    public record Point(Money budget, Figures figures) {
        public Point {
            Objects.requireNonNull(budget, "budget");
            Objects.requireNonNull(figures, "figures");
        }
    }
}
