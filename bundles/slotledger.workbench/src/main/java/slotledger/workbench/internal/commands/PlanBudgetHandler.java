package slotledger.workbench.internal.commands;

import org.eclipse.core.commands.ExecutionEvent;

/** Plans the open project's fleet with the budget chosen on the curve. */
public final class PlanBudgetHandler extends SessionHandler {

    public PlanBudgetHandler() {
        super(session -> session.budget().isPresent());
    }

    @Override
    public Object execute(ExecutionEvent event) {
        session().opened().ifPresent(opened -> Planner.plan(session(), opened, opened.with(session().budget())));
        return null;
    }
}
