package slotledger.app.internal;

import java.util.List;
import java.util.function.Consumer;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.PlanQuestions;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Alternative;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.BudgetStep;
import slotledger.model.plan.Plan;
import slotledger.model.plan.WithoutOffer;
import slotledger.model.task.Progress;
import slotledger.planner.Advice;
import slotledger.planner.PlannerException;

/** Hands questions to the planner's advice. */
final class AdvisedQuestions implements PlanQuestions {

    /** A question the planner answers. */
    private interface Question<T> {
        T ask() throws PlannerException;
    }

    private final Advice advice;

    AdvisedQuestions(Advice advice) {
        this.advice = advice;
    }

    private static <T> T answer(Question<T> question) throws DeskException {
        try {
            return question.ask();
        } catch (PlannerException problem) {
            throw new DeskException(Trouble.PLAN, problem.getMessage(), problem);
        }
    }

    @Override
    public Plan plan() {
        return advice.plan();
    }

    @Override
    public Plan withInsights(Progress progress) throws DeskException {
        return answer(() -> advice.withInsights(progress));
    }

    @Override
    public WithoutOffer without(String offer, Progress progress) throws DeskException {
        return answer(() -> advice.without(offer, progress));
    }

    @Override
    public List<BudgetStep> more(int most, Progress progress) throws DeskException {
        return answer(() -> advice.more(most, progress));
    }

    @Override
    public List<BudgetStep> less(int most, Progress progress) throws DeskException {
        return answer(() -> advice.less(most, progress));
    }

    @Override
    public List<Alternative> alternatives(AssetTag machine, Progress progress) throws DeskException {
        return answer(() -> advice.alternatives(machine, progress));
    }

    @Override
    public BudgetCurve curve(int points, Consumer<BudgetCurve> soFar, Progress progress) throws DeskException {
        return answer(() -> advice.curve(points, soFar, progress));
    }
}
