package slotledger.workbench.internal.commands;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
import slotledger.workbench.internal.session.Session;

/** Plans the open project's fleet with the budget chosen on the curve. */
public final class PlanBudgetHandler extends AbstractHandler {

    private final Session session = PlatformUI.getWorkbench().getService(Session.class);
    private final Runnable unlisten = session.listen(change -> setBaseEnabled(session.budget().isPresent()));

    public PlanBudgetHandler() {
        setBaseEnabled(session.budget().isPresent());
    }

    @Override
    public Object execute(ExecutionEvent event) {
        session.opened().ifPresent(opened -> Planner.plan(session, opened, opened.with(session.budget())));
        return null;
    }

    @Override
    public void dispose() {
        unlisten.run();
        super.dispose();
    }
}
