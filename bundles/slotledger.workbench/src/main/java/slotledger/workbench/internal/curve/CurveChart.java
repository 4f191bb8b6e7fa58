package slotledger.workbench.internal.curve;

import java.util.ArrayList;
import java.util.List;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.BudgetCurve.Point;
import slotledger.model.unit.Money;

/**
 * Where everything of a curve lies in a picture of some size.
 *
 * @param curve   what is drawn
 * @param budgets across
 * @param weights upwards
 */
record CurveChart(BudgetCurve curve, Axis budgets, Axis weights) {

    private static final int MARK_WIDTH = 90;
    private static final int MARK_HEIGHT = 40;
    private static final int LEAST_MARKS = 2;

    /** A curve in a picture, all in pixels. */
    static CurveChart of(BudgetCurve curve, int width, int height, Margins around) {
        int right = Math.max(around.left() + 1, width - around.right());
        int bottom = Math.max(around.top() + 1, height - around.bottom());
        long budget = curve.points().stream().mapToLong(point -> point.budget().minor()).max().orElse(1);
        long asked = curve.asked().map(Money::minor).orElse(0L);
        long weight = curve.points().stream().mapToLong(point -> point.figures().weightBound()).max().orElse(1);
        return new CurveChart(curve,
                Axis.of(Math.max(budget, asked), marks(right - around.left(), MARK_WIDTH), around.left(), right),
                Axis.of(weight, marks(bottom - around.top(), MARK_HEIGHT), bottom, around.top()));
    }

    private static int marks(int room, int each) {
        return Math.max(LEAST_MARKS, room / each);
    }

    /** The corners of the line of what is found: what a budget brings holds until the next one brings more. */
    int[] found() {
        List<Integer> corners = new ArrayList<>();
        int before = weights.at(0);
        for (Point point : curve.points()) {
            int height = weights.at(point.figures().weight());
            add(corners, budgets.at(point.budget().minor()), before, height);
            before = height;
        }
        return flat(corners);
    }

    /** The corners of the line of what is possible: between two budgets as much may be as with the larger one. */
    int[] possible() {
        List<Integer> corners = new ArrayList<>();
        for (int i = 0; i < curve.points().size(); i++) {
            Point point = curve.points().get(i);
            Point next = curve.points().get(Math.min(i + 1, curve.points().size() - 1));
            add(corners, budgets.at(point.budget().minor()), weights.at(point.figures().weightBound()),
                    weights.at(next.figures().weightBound()));
        }
        return flat(corners);
    }

    private static void add(List<Integer> corners, int x, int from, int to) {
        corners.addAll(List.of(x, from, x, to));
    }

    private static int[] flat(List<Integer> corners) {
        return corners.stream().mapToInt(Integer::intValue).toArray();
    }

    /** The point whose budget is nearest; -1 where there is none. */
    int nearest(int x) {
        int nearest = -1;
        for (int i = 0; i < curve.points().size(); i++) {
            if (nearest < 0 || distance(i, x) < distance(nearest, x)) {
                nearest = i;
            }
        }
        return nearest;
    }

    private int distance(int point, int x) {
        return Math.abs(budgets.at(curve.points().get(point).budget().minor()) - x);
    }

    /** Room for what stands around the lines, in pixels. */
    record Margins(int left, int top, int right, int bottom) {}
}
