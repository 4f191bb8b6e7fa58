package slotledger.workbench.internal.commands;

import org.eclipse.core.commands.AbstractHandler;
import org.eclipse.core.commands.ExecutionEvent;
import org.eclipse.ui.PlatformUI;
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
        session.opened().ifPresent(opened -> Planner.plan(session, opened, opened.survey()));
        return null;
    }

    @Override
    public void dispose() {
        unlisten.run();
        super.dispose();
    }
}
