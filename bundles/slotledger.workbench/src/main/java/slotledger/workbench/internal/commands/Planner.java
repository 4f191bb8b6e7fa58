package slotledger.workbench.internal.commands;

import org.eclipse.swt.widgets.Display;
import slotledger.app.Survey;
import slotledger.model.plan.Plan;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.DeskJob;
import slotledger.workbench.internal.session.Opened;
import slotledger.workbench.internal.session.Session;

/** Plans in the background. */
final class Planner {

    private Planner() {
    }

    /** Plans by a survey, which may differ from that of the project opened, for example in its budget. */
    static void plan(Session session, Opened opened, Survey survey) {
        new DeskJob<Plan>(Texts.with(Texts.job_plan, survey.project().title()),
                progress -> session.desk().plan(survey, progress), Display.getCurrent()::asyncExec,
                plan -> session.take(opened, plan)).schedule();
    }
}
