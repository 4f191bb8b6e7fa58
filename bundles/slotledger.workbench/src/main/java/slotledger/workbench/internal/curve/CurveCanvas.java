package slotledger.workbench.internal.curve;

import java.util.Optional;
import java.util.function.IntConsumer;
import org.eclipse.swt.SWT;
import org.eclipse.swt.accessibility.AccessibleAdapter;
import org.eclipse.swt.accessibility.AccessibleEvent;
import org.eclipse.swt.graphics.GC;
import org.eclipse.swt.graphics.Point;
import org.eclipse.swt.widgets.Canvas;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import org.eclipse.swt.widgets.Event;
import slotledger.model.plan.BudgetCurve;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.curve.CurveChart.Margins;

/** Shows a curve; a click, or the arrow keys, choose one of its points. */
final class CurveCanvas {

    private static final int GAP = 8;
    private static final int DIGITS = 5;

    private final Canvas canvas;
    private final IntConsumer chosen;
    private Optional<BudgetCurve> curve = Optional.empty();
    private int choice = -1;

    CurveCanvas(Composite parent, IntConsumer chosen) {
        this.chosen = chosen;
        canvas = new Canvas(parent, SWT.DOUBLE_BUFFERED | SWT.BORDER);
        canvas.setData(Ids.WIDGET, Ids.CURVE_CANVAS);
        canvas.setBackground(canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        canvas.addPaintListener(event -> paint(event.gc));
        canvas.addListener(SWT.MouseDown, event -> {
            canvas.setFocus();
            shown().ifPresent(known -> choose(chart(known).nearest(event.x)));
        });
        canvas.addListener(SWT.KeyDown, this::key);
        canvas.addListener(SWT.Traverse, event -> event.doit = true);
        canvas.getAccessible().addAccessibleListener(new AccessibleAdapter() {
            @Override
            public void getName(AccessibleEvent event) {
                event.result = inWords();
            }
        });
    }

    /** Shows another curve; the point chosen is forgotten. */
    void show(Optional<BudgetCurve> another) {
        curve = another;
        choice = -1;
        canvas.setData(Ids.WORDS, inWords());
        canvas.redraw();
    }

    Control control() {
        return canvas;
    }

    private Optional<BudgetCurve> shown() {
        return curve.filter(known -> !known.points().isEmpty());
    }

    private void key(Event event) {
        int step = event.keyCode == SWT.ARROW_RIGHT ? 1 : event.keyCode == SWT.ARROW_LEFT ? -1 : 0;
        if (step != 0) {
            shown().ifPresent(known -> choose(Math.floorMod(choice + step, known.points().size())));
        }
    }

    private void choose(int point) {
        choice = point;
        canvas.setData(Ids.WORDS, inWords());
        canvas.redraw();
        chosen.accept(point);
    }

    private void paint(GC gc) {
        gc.setForeground(canvas.getDisplay().getSystemColor(SWT.COLOR_LIST_FOREGROUND));
        shown().ifPresent(known -> new CurvePainter(gc, chart(known)).paint(choice));
    }

    private CurveChart chart(BudgetCurve known) {
        GC gc = new GC(canvas);
        Point digits = gc.textExtent("0".repeat(DIGITS));
        gc.dispose();
        Point size = canvas.getSize();
        return CurveChart.of(known, size.x, size.y,
                new Margins(digits.x + GAP, digits.y * 2, digits.x, digits.y * 2 + GAP * 2));
    }

    private String inWords() {
        return shown().map(known -> choice < 0 ? CurveWords.summary(true, curve)
                : CurveWords.point(known.points().get(choice))).orElse(Texts.curve_none);
    }
}
