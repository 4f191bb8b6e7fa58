package slotledger.workbench.internal.commands;

import java.util.concurrent.Executor;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Display;
import slotledger.model.plan.BudgetCurve;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.DeskJob;

/** Works out in the background what each budget brings; the curve grows as its points come. */
public final class CurveHandler extends SessionHandler {

    private static final int POINTS = 16;

    public CurveHandler() {
        super(session -> session.opened().isPresent());
    }

    @Override
    public Object execute(ExecutionEvent event) {
        Executor window = Display.getCurrent()::asyncExec;
        session().opened().ifPresent(opened -> new DeskJob<BudgetCurve>(
                Texts.with(Texts.job_curve, opened.survey().project().title()),
                progress -> session().desk().curve(opened.survey(), POINTS,
                        soFar -> window.execute(() -> session().take(opened, soFar)), progress),
                window, curve -> session().take(opened, curve)).schedule());
        return null;
    }
}
