package slotledger.app;

import java.util.List;
import java.util.function.Consumer;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Alternative;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.BudgetStep;
import slotledger.model.plan.Plan;
import slotledger.model.plan.WithoutOffer;
import slotledger.model.task.Progress;

/**
 * A plan, and the answers to what would be best were things otherwise. Each question is searched when it is asked and
 * can be cancelled without harm to the others. Not for several threads at a time.
 */
public interface PlanQuestions {

    /** The best plan, checked by the rules. */
    Plan plan();

    /**
     * The plan with what doing without each purchase line would cost, and the next steps of the budget. Takes about as
     * many searches as the order has lines.
     */
    Plan withInsights(Progress progress) throws DeskException;

    /**
     * What the best plan comes to where an offer can't be bought.
     *
     * @param offer id of an offer the plan buys
     */
    WithoutOffer without(String offer, Progress progress) throws DeskException;

    /** What larger budgets would buy, at most so many steps; empty where money buys nothing more. */
    List<BudgetStep> more(int most, Progress progress) throws DeskException;

    /** What smaller budgets would lose, at most so many steps; the first loses nothing. */
    List<BudgetStep> less(int most, Progress progress) throws DeskException;

    /**
     * The populations a machine could end with, and what the whole plan would come to; best first.
     *
     * @throws DeskException where the machine isn't planned
     */
    List<Alternative> alternatives(AssetTag machine, Progress progress) throws DeskException;

    /**
     * Budget against weighted machines on target.
     *
     * @param points about how many, at least 2
     * @param soFar  is told the curve after every point
     */
    BudgetCurve curve(int points, Consumer<BudgetCurve> soFar, Progress progress) throws DeskException;
}
