package slotledger.planner.internal;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.planner.PlannerException;
import slotledger.solver.MilpSolver;

/** Picks the solver to use. */
final class Solvers {

    private Solvers() {
    }

    /** The solvers of a service's entries, highest ranking first. */
    static List<MilpSolver> byRanking(List<Map.Entry<Map<String, Object>, MilpSolver>> solvers) {
        return solvers.stream()
                .sorted(Comparator.comparingInt(solver -> -ranking(solver.getKey())))
                .map(Map.Entry::getValue)
                .toList();
    }

    private static int ranking(Map<String, Object> properties) {
        return properties.get("service.ranking") instanceof Integer ranking ? ranking : 0;
    }

    /** The first that can be used on this machine. */
    static MilpSolver firstUsable(List<MilpSolver> solvers) throws PlannerException {
        for (MilpSolver solver : solvers) {
            if (solver.hindrance().isEmpty()) {
                return solver;
            }
        }
        String why = solvers.stream().map(MilpSolver::hindrance).flatMap(Optional::stream)
                .collect(Collectors.joining(" "));
        throw new PlannerException("No solver can be used on this machine. " + why
                + " Put a bundle with a solver into the folder dropins, or use a machine with another system.");
    }
}
