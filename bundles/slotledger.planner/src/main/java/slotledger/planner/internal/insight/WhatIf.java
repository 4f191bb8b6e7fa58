package slotledger.planner.internal.insight;

import java.util.Optional;
import slotledger.model.plan.Figures;
import slotledger.model.plan.Spending;
import slotledger.model.task.Progress;
import slotledger.model.unit.Money;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.Listed;
import slotledger.planner.internal.Planning;
import slotledger.planner.internal.Solved;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.Choice;

/** Searches for the best plan once more under changed terms. All questions come through here. */
final class WhatIf {

    /**
     * The best under the changed terms.
     *
     * @param solved  what was decided
     * @param figures what it comes to
     */
    record Answer(Solved solved, Figures figures) {
    }

    private final Planning planning;

    WhatIf(Planning planning) {
        this.planning = planning;
    }

    /** The best plan; empty where the terms allow none. */
    Optional<Answer> ask(Listed changed, Progress progress) throws PlannerException {
        progress.check();
        Optional<Solved> solved = planning.search(changed, progress);
        progress.check();
        return solved.map(found -> new Answer(found, figures(changed, found)));
    }

    private Figures figures(Listed listed, Solved solved) {
        Spending spending = planning.spending(listed, solved);
        Choice choice = solved.choice();
        long onTarget = 0;
        long weight = 0;
        for (int group = 0; group < choice.options().size(); group++) {
            Options options = choice.options().get(group);
            long machines = onTarget(choice, group);
            onTarget += machines;
            weight += machines * options.group().weight();
        }
        Money cost = spending.total();
        return new Figures(
                onTarget,
                weight,
                weight + solved.missed().value() - solved.missed().bound(),
                spending.againstBudget(listed.request().policy().buying().tax()),
                cost,
                new Money(Math.min(cost.minor(), solved.cost().bound()), cost.currency()));
    }

    /** Machines of a class that are on target. */
    static long onTarget(Choice choice, int group) {
        long machines = 0;
        int number = 0;
        for (Candidate candidate : choice.options().get(group).candidates()) {
            machines += candidate.onTarget() ? choice.count(group, number) : 0;
            number++;
        }
        return machines;
    }
}
