package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.planner.PlannerException;
import slotledger.solver.MilpSolver;

/**
 * The solvers there are, the best first.
 *
 * @param all the best first
 */
public record Solvers(List<MilpSolver> all) {

    /**
     * The solver to use.
     *
     * @param solver    the first that can be used
     * @param passedOver why better ones can't, a sentence each
     */
    public record Pick(MilpSolver solver, List<String> passedOver) {
        public Pick {
            passedOver = List.copyOf(passedOver);
        }
    }

    public Solvers {
        all = List.copyOf(all);
    }

    /** The solvers of a service's entries, highest ranking first. */
    public static Solvers byRanking(List<Map.Entry<Map<String, Object>, MilpSolver>> entries) {
        return new Solvers(entries.stream()
                .sorted(Comparator.comparingInt(solver -> -ranking(solver.getKey())))
                .map(Map.Entry::getValue)
                .toList());
    }

    private static int ranking(Map<String, Object> properties) {
        return properties.get("service.ranking") instanceof Integer ranking ? ranking : 0;
    }

    /** The first that can be used on this machine, of those whose name contains a text where one is given. */
    public Pick pick(Optional<String> name) throws PlannerException {
        List<MilpSolver> named = all.stream().filter(solver -> name.isEmpty()
                || solver.name().toLowerCase(Locale.ROOT).contains(name.get().toLowerCase(Locale.ROOT))).toList();
        if (named.isEmpty()) {
            throw new PlannerException("There is no solver \"%s\". Known are: %s.".formatted(name.orElse(""),
                    all.stream().map(MilpSolver::name).collect(Collectors.joining(", "))));
        }
        List<String> passedOver = new ArrayList<>();
        for (MilpSolver solver : named) {
            Optional<String> hindrance = solver.hindrance();
            if (hindrance.isEmpty()) {
                return new Pick(solver, passedOver);
            }
            passedOver.add(hindrance.get());
        }
        throw new PlannerException("No solver can be used on this machine. " + String.join(" ", passedOver)
                + " Put a bundle with a solver into the folder dropins, or use a machine with another system.");
    }
}
