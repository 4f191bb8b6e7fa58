package slotledger.workbench.internal.commands;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.swt.widgets.Display;
import org.eclipse.ui.PlatformUI;
import slotledger.model.plan.Plan;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.DeskJob;
import slotledger.workbench.internal.session.Session;

/** Plans the open project's fleet in the background. */
public final class PlanHandler extends AbstractHandler {

    private final Session session = PlatformUI.getWorkbench().getService(Session.class);
    private final Runnable unlisten = session.listen(change -> setBaseEnabled(session.opened().isPresent()));

    public PlanHandler() {
        setBaseEnabled(session.opened().isPresent());
    }

    @Override
    public Object execute(ExecutionEvent event) {
        session.opened().ifPresent(opened -> new DeskJob<Plan>(
                Texts.with(Texts.job_plan, opened.survey().project().title()),
                progress -> session.desk().plan(opened.survey(), progress),
                Display.getCurrent()::asyncExec, plan -> session.take(opened, plan)).schedule());
        return null;
    }

    @Override
    public void dispose() {
        unlisten.run();
        super.dispose();
    }
}
