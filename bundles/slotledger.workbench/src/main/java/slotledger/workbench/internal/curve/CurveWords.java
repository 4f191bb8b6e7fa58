package slotledger.workbench.internal.curve;

import java.util.Optional;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.BudgetCurve.Point;
import slotledger.model.plan.Figures;
import slotledger.workbench.internal.Texts;

/** What the curve says, in words. */
final class CurveWords {

    private CurveWords() {
    }

    /** One line about the curve, or what to do to get one. */
    static String summary(boolean isOpen, Optional<BudgetCurve> curve) {
        if (curve.isEmpty()) {
            return isOpen ? Texts.curve_none : Texts.summary_nothing_open;
        }
        BudgetCurve known = curve.get();
        return known.points().isEmpty() ? Texts.curve_empty
                : Texts.with(Texts.curve_summary, known.points().size(), known.withTarget());
    }

    /** What one budget brings. */
    static String point(Point point) {
        Figures figures = point.figures();
        String most = figures.weight() == figures.weightBound() ? Texts.curve_best
                : Texts.with(Texts.curve_at_most, figures.weightBound());
        return Texts.with(Texts.curve_point, point.budget(), figures.onTarget(), figures.weight(), figures.payable())
                + " " + most;
    }
}
