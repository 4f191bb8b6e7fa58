package slotledger.workbench.internal.curve;

import jakarta.annotation.PostConstruct;
import jakarta.annotation.PreDestroy;
import jakarta.inject.Inject;
import java.util.Optional;
import org.eclipse.e4.ui.di.Focus;
import org.eclipse.swt.layout.FillLayout;
import org.eclipse.swt.widgets.Composite;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.unit.Money;
import slotledger.workbench.internal.Ids;
import slotledger.workbench.internal.Sentence;
import slotledger.workbench.internal.lines.Summarised;
import slotledger.workbench.internal.session.Session;

/** What each budget brings, as a curve on which a budget is chosen. */
public final class CurvePart {

    private final Session session;
    private Runnable unlisten = () -> { };
    private Optional<BudgetCurve> shown = Optional.empty();
    private Summarised part;
    private Sentence sentence;
    private CurveCanvas canvas;

    @Inject
    public CurvePart(Session session) {
        this.session = session;
    }

    @PostConstruct
    void create(Composite parent) {
        part = new Summarised(parent, Ids.CURVE_SUMMARY);
        sentence = new Sentence(part.below(), Ids.CURVE_SENTENCE);
        sentence.above().setLayout(new FillLayout());
        canvas = new CurveCanvas(sentence.above(), this::choose);
        unlisten = session.listen(change -> show());
        show();
    }

    @Focus
    void focus() {
        canvas.control().setFocus();
    }

    @PreDestroy
    void close() {
        unlisten.run();
    }

    private void choose(int point) {
        BudgetCurve.Point chosen = shown.orElseThrow().points().get(point);
        Optional<Money> budget = Optional.of(chosen.budget());
        sentence.show(CurveWords.point(chosen));
        session.choose(budget);
    }

    private void show() {
        part.say(CurveWords.summary(session.opened().isPresent(), session.curve()));
        if (!shown.equals(session.curve())) {
            shown = session.curve();
            sentence.show("");
            canvas.show(shown);
        }
    }
}
