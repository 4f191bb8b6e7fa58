package slotledger.ortools.internal;

import com.google.ortools.sat.CpModel;
import com.google.ortools.sat.CpSolver;
import com.google.ortools.sat.CpSolverStatus;
import com.google.ortools.sat.IntVar;
import com.google.ortools.sat.LinearExpr;
import com.google.ortools.util.Domain;
import java.util.List;
import java.util.Optional;
import slotledger.lib.solver.NativeSolver;
import slotledger.lib.solver.NativeSolverException;
import slotledger.model.task.Progress;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/**
 * CP-SAT of OR-Tools. It computes in whole numbers, so that its bounds are exact. Its search is limited by counted
 * work, never by the clock, and its strategies take turns in a fixed order, so that every run gives the same answer.
 */
public final class CpSatSolver implements MilpSolver {

    private static final int SEED = 1;
    private static final int STRATEGIES = 8;

    private final double mostWork;

    /**
     * A solver.
     *
     * @param mostWork limit of the search in the solver's own units of counted work, about a second each
     */
    public CpSatSolver(double mostWork) {
        this.mostWork = mostWork;
    }

    @Override
    public String name() {
        return "CP-SAT (OR-Tools)";
    }

    @Override
    public Optional<String> hindrance() {
        return Optional.empty();
    }

    @Override
    public Optional<MilpSolution> minimise(
            IntegerProgramme programme, Linear goal, int mostNodes, Optional<long[]> start, Progress progress)
            throws SolverException {
        load();
        CpModel model = new CpModel();
        IntVar[] variables = variables(model, programme);
        for (IntegerProgramme.Row row : programme.rows()) {
            model.addLinearExpressionInDomain(expression(row.sum(), variables), new Domain(row.low(), row.high()));
        }
        model.minimize(expression(goal, variables));
        start.ifPresent(values -> hint(model, variables, values));
        CpSolver solver = solver();
        CpSolverStatus status = Canceller.run(() -> solver.solve(model), solver::stopSearch, progress);
        progress.check();
        return switch (status) {
            case OPTIMAL, FEASIBLE -> Optional.of(solution(programme, goal, solver, variables, status));
            case INFEASIBLE -> Optional.empty();
            case UNKNOWN, MODEL_INVALID, UNRECOGNIZED -> throw new SolverException(
                    "The solver found no plan within its limit of work (%s). Plan parts of the fleet one by one."
                            .formatted(status));
        };
    }

    private static void load() throws SolverException {
        try {
            NativeSolver.load();
        } catch (NativeSolverException e) {
            throw new SolverException(e.getMessage(), e);
        }
    }

    private CpSolver solver() {
        CpSolver solver = new CpSolver();
        solver.getParameters()
                .setRandomSeed(SEED)
                .setNumWorkers(STRATEGIES)
                .setInterleaveSearch(true)
                .setMaxDeterministicTime(mostWork);
        return solver;
    }

    private static IntVar[] variables(CpModel model, IntegerProgramme programme) {
        List<IntegerProgramme.Variable> variables = programme.variables();
        IntVar[] made = new IntVar[variables.size()];
        for (int i = 0; i < made.length; i++) {
            made[i] = model.newIntVar(variables.get(i).low(), variables.get(i).high(), "");
        }
        return made;
    }

    private static LinearExpr expression(Linear sum, IntVar[] variables) {
        IntVar[] used = new IntVar[sum.size()];
        long[] factors = new long[sum.size()];
        int[] next = {0};
        sum.forEach((variable, factor) -> {
            used[next[0]] = variables[variable];
            factors[next[0]++] = factor;
        });
        return LinearExpr.weightedSum(used, factors);
    }

    private static void hint(CpModel model, IntVar[] variables, long[] values) {
        for (int i = 0; i < variables.length; i++) {
            model.addHint(variables[i], values[i]);
        }
    }

    private static MilpSolution solution(
            IntegerProgramme programme, Linear goal, CpSolver solver, IntVar[] variables, CpSolverStatus status) {
        long[] values = new long[variables.length];
        for (int i = 0; i < values.length; i++) {
            values[i] = solver.value(variables[i]);
        }
        programme.broken(values).ifPresent(row -> {
            throw new IllegalStateException("The solver's values must keep the row %s.".formatted(row));
        });
        long value = goal.of(values);
        long bound = status == CpSolverStatus.OPTIMAL
                ? value : Math.min(value, (long) Math.floor(solver.bestObjectiveBound()));
        return new MilpSolution(values, value, bound);
    }
}
