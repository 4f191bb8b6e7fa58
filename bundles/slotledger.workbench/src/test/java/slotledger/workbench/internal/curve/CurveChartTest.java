package slotledger.workbench.internal.curve;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Figures;
import slotledger.model.unit.Money;
import slotledger.workbench.internal.curve.CurveChart.Margins;

class CurveChartTest {

    private static final BudgetCurve CURVE = new BudgetCurve(
            List.of(point(0, 10, 10), point(5000, 30, 35), point(10000, 40, 40)), Optional.of(euro(5000)), 50);

    private final CurveChart chart = CurveChart.of(CURVE, 220, 120, new Margins(10, 10, 10, 10));

    @Test
    void theScalesBeginAtZeroAndEndAtARoundNumber() {
        assertEquals(List.of(0L, 5000L, 10000L), chart.budgets().marks());
        assertEquals(List.of(0L, 20L, 40L), chart.weights().marks());
        assertEquals(List.of(10, 110, 210), chart.budgets().marks().stream().map(chart.budgets()::at).toList());
        assertEquals(List.of(110, 60, 10), chart.weights().marks().stream().map(chart.weights()::at).toList());
    }

    @Test
    void whatABudgetBringsHoldsUntilTheNextOneBringsMore() {
        assertArrayEquals(new int[] {10, 110, 10, 85, 110, 85, 110, 35, 210, 35, 210, 10}, chart.found());
    }

    @Test
    void betweenTwoBudgetsAsMuchMayBePossibleAsWithTheLargerOne() {
        assertArrayEquals(new int[] {10, 85, 10, 23, 110, 23, 110, 10, 210, 10, 210, 10}, chart.possible());
    }

    @Test
    void aClickChoosesTheNearestBudget() {
        assertEquals(0, chart.nearest(0));
        assertEquals(1, chart.nearest(61));
        assertEquals(2, chart.nearest(1000));
    }

    @Test
    void aRoundNumberIsOneTwoOrFiveTimesAPowerOfTen() {
        assertEquals(new Axis(500, 50, 0, 1), Axis.of(451, 10, 0, 1));
        assertEquals(new Axis(1000, 100, 0, 1), Axis.of(1000, 10, 0, 1));
        assertEquals(new Axis(1, 1, 0, 1), Axis.of(0, 10, 0, 1));
    }

    @Test
    void aPointSaysWhatItBringsAndWhetherMoreIsPossible() {
        assertEquals("EUR 50.00 bring 30 machines to their target (by weight 30); EUR 49.00 to pay. "
                + "No plan brings more than 35 by weight.", CurveWords.point(CURVE.points().get(1)));
        assertEquals("EUR 100.00 bring 40 machines to their target (by weight 40); EUR 99.00 to pay. "
                + "No plan brings more for this money.", CurveWords.point(CURVE.points().get(2)));
    }

    private static BudgetCurve.Point point(long budget, long weight, long bound) {
        Money paid = euro(Math.max(0, budget - 100));
        return new BudgetCurve.Point(euro(budget), new Figures(weight, weight, bound, paid, paid, paid));
    }

    private static Money euro(long cents) {
        return new Money(cents, Currency.getInstance("EUR"));
    }
}
