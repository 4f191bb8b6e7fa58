package slotledger.workbench.internal.commands;

import org.eclipse.core.commands.ExecutionEvent;

/** Plans the open project's fleet in the background. */
public final class PlanHandler extends SessionHandler {

    public PlanHandler() {
        super(session -> session.opened().isPresent());
    }

    @Override
    public Object execute(ExecutionEvent event) {
        session().opened().ifPresent(opened -> Planner.plan(session(), opened, opened.survey()));
        return null;
    }
}
