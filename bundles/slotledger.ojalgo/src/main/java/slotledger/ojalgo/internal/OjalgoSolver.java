package slotledger.ojalgo.internal;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.task.Progress;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/**
 * A solver in pure Java, for machines that no native library runs on: our own branch and bound over the linear
 * programmes of ojAlgo. (ojAlgo's own search for whole numbers found no plan of 600 machines within a minute.)
 *
 * <p>It runs on one thread and is limited by counted nodes, never by the clock, so that every run gives the same
 * answer. Its bounds hold in exact arithmetic. Its limits: it cuts nothing off but by branching, so that a fleet with
 * many price steps, delivery charges and budgets may end with a gap, which is said; its linear programmes are dense, so
 * that memory grows with variables times rows.
 */
@Component(property = "service.ranking:Integer=10")
public final class OjalgoSolver implements MilpSolver {

    @Override
    public String name() {
        return "ojAlgo (Java)";
    }

    @Override
    public Optional<String> hindrance() {
        return Optional.empty();
    }

    @Override
    public Optional<MilpSolution> minimise(
            IntegerProgramme programme, Linear goal, int mostNodes, Optional<long[]> start, Progress progress)
            throws SolverException {
        Search search = new Search(programme, goal);
        start.ifPresent(search::offer);
        search.run(mostNodes, progress);
        if (search.hasValues()) {
            return Optional.of(search.solution());
        }
        if (search.isComplete()) {
            return Optional.empty();
        }
        progress.check();
        throw new SolverException(
                "The solver found no plan within %d nodes of its search. Plan parts of the fleet one by one."
                        .formatted(mostNodes));
    }
}
