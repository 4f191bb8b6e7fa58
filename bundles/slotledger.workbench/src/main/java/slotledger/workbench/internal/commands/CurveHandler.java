package slotledger.workbench.internal.commands;

import java.util.concurrent.Executor;
import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import slotledger.model.plan.BudgetCurve;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.DeskJob;
import slotledger.workbench.internal.session.Session;

/** Works out in the background what each budget brings; the curve grows as its points come. */
public final class CurveHandler extends AbstractHandler {

    private static final int POINTS = 16;

    private final Session session = PlatformUI.getWorkbench().getService(Session.class);
    private final Runnable unlisten = session.listen(change -> setBaseEnabled(session.opened().isPresent()));

    public CurveHandler() {
        setBaseEnabled(session.opened().isPresent());
    }

    @Override
    public Object execute(ExecutionEvent event) {
        Executor window = Display.getCurrent()::asyncExec;
        session.opened().ifPresent(opened -> new DeskJob<BudgetCurve>(
                Texts.with(Texts.job_curve, opened.survey().project().title()),
                progress -> session.desk().curve(opened.survey(), POINTS,
                        soFar -> window.execute(() -> session.take(opened, soFar)), progress),
                window, curve -> session.take(opened, curve)).schedule());
        return null;
    }

    @Override
    public void dispose() {
        unlisten.run();
        super.dispose();
    }
}
