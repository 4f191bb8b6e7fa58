package slotledger.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Figures;
import slotledger.model.unit.Money;

/** Outside check: none; words of our own. */
class CurveTextTest {

    private static BudgetCurve curve(int... budgets) {
        List<BudgetCurve.Point> points = Stream.iterate(0, i -> i < budgets.length, i -> i + 1).map(i -> {
            Money budget = new Money(budgets[i] * 100L, Currency.getInstance("EUR"));
            return new BudgetCurve.Point(budget, new Figures(i + 2, i + 2, 9, budget, budget, budget));
        }).toList();
        return new BudgetCurve(points, Optional.empty(), 9);
    }

    @Test
    void onePointIsSaidAlone() {
        assertEquals("one budget so far: EUR 500.00 brings 2 machines on target", CurveText.soFar(curve(500)));
    }

    @Test
    void ofSeveralPointsTheLeastAndTheMostAreSaid() {
        assertEquals("3 budgets so far: EUR 500.00 brings 2 machines on target, EUR 7500.00 brings 4",
                CurveText.soFar(curve(500, 900, 7500)));
    }
}
