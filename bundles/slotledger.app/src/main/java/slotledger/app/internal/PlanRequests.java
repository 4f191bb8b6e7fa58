package slotledger.app.internal;

import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Survey;
import slotledger.model.trade.Policy;
import slotledger.planner.PlanRequest;

/** What the planner is asked for a project. */
final class PlanRequests {

    private PlanRequests() {
    }

    static PlanRequest of(Survey survey) throws DeskException {
        Policy policy = PolicyCheck.usable(survey);
        if (survey.fleet().machines().isEmpty()) {
            throw new DeskException(Trouble.PLAN, "There is no machine to plan: the inventories list "
                    + survey.observed() + ", and none has a known board and modules. The command \"check\" says why.");
        }
        return new PlanRequest(survey.project().title(), survey.fleet(), survey.market(),
                survey.shelf(), policy, survey.project().date(), survey.choices(), survey.before());
    }
}
