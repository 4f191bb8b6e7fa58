package slotledger.planner.internal;

import java.util.Objects;
import slotledger.planner.internal.model.Choice;
import slotledger.solver.MilpSolution;

/**
 * What a search decided, and what it proved.
 *
 * @param choice     how many machines of each class get which population, and what is bought
 * @param missed     weighted machines below target that could be helped
 * @param cost       goods, delivery and labour, minor units
 * @param missedSafe bound of what is missed that exact arithmetic alone proves
 * @param costSafe   bound of the cost that exact arithmetic alone proves
 * @param solver     who found it
 * @param isCut      whether the user stopped the search
 */
public record Solved(
        Choice choice,
        MilpSolution missed,
        MilpSolution cost,
        long missedSafe,
        long costSafe,
        String solver,
        boolean isCut) {

    public Solved {
        Objects.requireNonNull(choice, "choice");
        Objects.requireNonNull(missed, "missed");
        Objects.requireNonNull(cost, "cost");
        Objects.requireNonNull(solver, "solver");
    }
}
