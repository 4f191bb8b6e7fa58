package slotledger.workbench.internal.curve;

import java.util.Currency;
import org.eclipse.swt.SWT;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Display;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.unit.Money;
import slotledger.workbench.internal.Texts;

/** Paints a curve in the colours of the desktop: a full line for what is found, a dashed one for what is possible. */
final class CurvePainter {

    private static final int DOT = 4;
    private static final int GAP = 4;
    private static final int THICK = 2;

    private final GC gc;
    private final Display display = Display.getCurrent();
    private final CurveChart chart;

    CurvePainter(GC gc, CurveChart chart) {
        this.gc = gc;
        this.chart = chart;
    }

    void paint(int chosen) {
        gc.setAntialias(SWT.ON);
        axes();
        chart.curve().asked().ifPresent(this::asked);
        gc.setForeground(display.getSystemColor(SWT.COLOR_LIST_FOREGROUND));
        gc.setLineStyle(SWT.LINE_DASH);
        gc.drawPolyline(chart.possible());
        gc.setLineStyle(SWT.LINE_SOLID);
        gc.setLineWidth(THICK);
        gc.drawPolyline(chart.found());
        gc.setLineWidth(1);
        for (int i = 0; i < chart.curve().points().size(); i++) {
            dot(chart.curve().points().get(i), i == chosen);
        }
    }

    private void axes() {
        gc.setForeground(display.getSystemColor(SWT.COLOR_WIDGET_LIGHT_SHADOW));
        Axis budgets = chart.budgets();
        Axis weights = chart.weights();
        weights.marks().forEach(mark ->
                gc.drawLine(budgets.start(), weights.at(mark), budgets.end(), weights.at(mark)));
        gc.setForeground(display.getSystemColor(SWT.COLOR_LIST_FOREGROUND));
        gc.drawLine(budgets.start(), weights.start(), budgets.end(), weights.start());
        for (long mark : weights.marks()) {
            Point size = gc.textExtent(Long.toString(mark));
            gc.drawText(Long.toString(mark), budgets.start() - GAP - size.x, weights.at(mark) - size.y / 2, true);
        }
        for (long mark : budgets.marks()) {
            String text = new Money(mark, currency()).amount().toBigInteger().toString();
            Point size = gc.textExtent(text);
            gc.drawLine(budgets.at(mark), weights.start(), budgets.at(mark), weights.start() + GAP);
            gc.drawText(text, budgets.at(mark) - size.x / 2, weights.start() + GAP, true);
        }
        String across = Texts.with(Texts.curve_across, currency().getCurrencyCode());
        Point size = gc.textExtent(across);
        gc.drawText(across, budgets.end() - size.x, weights.start() + GAP + size.y, true);
        gc.drawText(Texts.curve_upwards, GAP, GAP, true);
    }

    private void asked(Money budget) {
        int x = chart.budgets().at(budget.minor());
        gc.setForeground(display.getSystemColor(SWT.COLOR_LIST_FOREGROUND));
        gc.setLineStyle(SWT.LINE_DOT);
        gc.drawLine(x, chart.weights().start(), x, chart.weights().end());
        gc.setLineStyle(SWT.LINE_SOLID);
        Point size = gc.textExtent(Texts.curve_asked);
        gc.drawText(Texts.curve_asked, Math.max(GAP, x - size.x - GAP), chart.weights().start() - size.y - GAP, true);
    }

    private void dot(BudgetCurve.Point point, boolean chosen) {
        int x = chart.budgets().at(point.budget().minor());
        int y = chart.weights().at(point.figures().weight());
        int size = chosen ? DOT * 2 : DOT;
        gc.setBackground(display.getSystemColor(chosen ? SWT.COLOR_LIST_SELECTION : SWT.COLOR_LIST_FOREGROUND));
        gc.fillOval(x - size, y - size, size * 2, size * 2);
        if (chosen) {
            gc.drawOval(x - size, y - size, size * 2, size * 2);
        }
    }

    private Currency currency() {
        return chart.curve().points().get(0).budget().currency();
    }
}
