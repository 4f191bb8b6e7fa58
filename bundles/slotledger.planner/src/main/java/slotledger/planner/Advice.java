package slotledger.planner;

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
 * A plan, and what would be best were things otherwise. Each question is searched when it is asked, which takes about
 * as long as the search for the plan; it can be cancelled without harm to the others. For one thread at a time.
 */
public interface Advice {

    /** The best plan, without insights. */
    Plan plan();

    /**
     * What the best plan comes to where an offer can't be bought.
     *
     * @param offer id of an offer the plan buys
     */
    WithoutOffer without(String offer, Progress progress) throws PlannerException;

    /**
     * What larger budgets would buy, step by step: the smallest budget that brings more weighted machines on target,
     * the next one after that, and so on. Empty where the policy sets no budget or money buys nothing more.
     *
     * @param most most steps
     */
    List<BudgetStep> more(int most, Progress progress) throws PlannerException;

    /**
     * What smaller budgets would lose, step by step. The first is the smallest budget that still brings as many
     * weighted machines on target as the plan.
     *
     * @param most most steps
     */
    List<BudgetStep> less(int most, Progress progress) throws PlannerException;

    /**
     * The populations a machine could end with, cheapest plan first. Those that take more of every kind and more work
     * than another are left out.
     *
     * @param machine of the fleet
     * @throws PlannerException where the machine isn't in the fleet
     */
    List<Alternative> alternatives(AssetTag machine, Progress progress) throws PlannerException;

    /**
     * Budget against weighted machines on target.
     *
     * @param points about how many, at least 2
     * @param soFar  is told the curve after every point
     */
    BudgetCurve curve(int points, Consumer<BudgetCurve> soFar, Progress progress) throws PlannerException;

    /**
     * The plan with what doing without each purchase line would cost, with the next steps of the budget, and with the
     * price of each decision of people.
     */
    Plan withInsights(Progress progress) throws PlannerException;
}
