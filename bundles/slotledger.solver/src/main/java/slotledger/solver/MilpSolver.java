package slotledger.solver;

import java.util.Optional;
import slotledger.model.task.Progress;

/**
 * Solves integer programmes. The same programme gives the same answer on every run.
 *
 * <p>An OSGi service. Of several, the planner takes the one with the highest ranking that has no hindrance.
 */
public interface MilpSolver {

    /** Name and version, for the proof. */
    String name();

    /** Why it can't be used on this machine, one sentence; empty where it can. May take a second at the first call. */
    Optional<String> hindrance();

    /** What solves relaxations without whole numbers, where this solver has such a door; without it big fleets wait. */
    default Optional<LinearSolver> linear() {
        return Optional.empty();
    }

    /**
     * The values that keep all rows and make the goal smallest. Where the user cancels, the best values so far.
     *
     * @param mostNodes limit of the search, in nodes of its tree or work like that
     * @param start     values to begin with, where some are known; they need not be the best
     * @return the best values found, with a bound; empty where it is proven that no values keep all rows
     * @throws SolverException where the solver can't be used here, or finds no answer within its limits or before the
     *                         user cancels
     */
    Optional<MilpSolution> minimise(
            IntegerProgramme programme, Linear goal, int mostNodes, Optional<long[]> start, Progress progress)
            throws SolverException;
}
