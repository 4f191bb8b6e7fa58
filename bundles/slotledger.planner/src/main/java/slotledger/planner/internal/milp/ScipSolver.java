package slotledger.planner.internal.milp;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.List;
import java.util.Optional;
import slotledger.lib.solver.NativeSolver;
import slotledger.lib.solver.NativeSolverException;
import slotledger.model.task.Progress;
import slotledger.planner.PlannerException;

/**
 * SCIP in OR-Tools. It runs on one thread and is limited by the nodes of its search tree, never by the clock, so that
 * every run gives the same answer. It computes in floating point: its values are rounded and checked exactly, its
 * bound is rounded away from the value by its own tolerance.
 */
public final class ScipSolver implements MilpSolver {

    /** Relative tolerance of a bound (SCIP's feasibility tolerance is 1e-6, of an equation 1e-9). */
    private static final double TOLERANCE = 1e-9;
    private static final double LEAST_TOLERANCE = 1e-4;

    @Override
    public String name() {
        return "SCIP (OR-Tools)";
    }

    @Override
    public Optional<MilpSolution> minimise(
            IntegerProgramme programme, Linear goal, int mostNodes, Optional<long[]> start, Progress progress)
            throws PlannerException {
        load();
        MPSolver solver = MPSolver.createSolver("SCIP");
        try {
            solver.suppressOutput();
            MPVariable[] variables = build(solver, programme, goal);
            start.ifPresent(values -> hint(solver, variables, values));
            solver.setSolverSpecificParametersAsString("limits/nodes = " + mostNodes);
            MPSolverParameters exact = new MPSolverParameters();
            exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
            MPSolver.ResultStatus status =
                    Canceller.run(() -> solver.solve(exact), solver::interruptSolve, progress);
            progress.check();
            if (status == MPSolver.ResultStatus.INFEASIBLE && start.isEmpty()) {
                return Optional.empty();
            }
            return Optional.of(solution(programme, goal, solver, variables, status, start));
        } finally {
            solver.delete();
        }
    }

    private static void load() throws PlannerException {
        try {
            NativeSolver.load();
        } catch (NativeSolverException e) {
            throw new PlannerException(e.getMessage(), e);
        }
    }

    private static MPVariable[] build(MPSolver solver, IntegerProgramme programme, Linear goal) {
        List<IntegerProgramme.Variable> wanted = programme.variables();
        MPVariable[] variables = new MPVariable[wanted.size()];
        for (int i = 0; i < variables.length; i++) {
            variables[i] = solver.makeIntVar(wanted.get(i).low(), wanted.get(i).high(), "");
        }
        for (IntegerProgramme.Row row : programme.rows()) {
            MPConstraint made = solver.makeConstraint(
                    row.low() == IntegerProgramme.NO_LOW ? -MPSolver.infinity() : row.low(),
                    row.high() == IntegerProgramme.NO_HIGH ? MPSolver.infinity() : row.high());
            row.sum().forEach((variable, factor) -> made.setCoefficient(variables[variable], factor));
        }
        goal.forEach((variable, factor) -> solver.objective().setCoefficient(variables[variable], factor));
        solver.objective().setMinimization();
        return variables;
    }

    private static void hint(MPSolver solver, MPVariable[] variables, long[] values) {
        double[] hint = new double[values.length];
        for (int i = 0; i < hint.length; i++) {
            hint[i] = values[i];
        }
        solver.setHint(variables, hint);
    }

    private static MilpSolution solution(
            IntegerProgramme programme,
            Linear goal,
            MPSolver solver,
            MPVariable[] variables,
            MPSolver.ResultStatus status,
            Optional<long[]> start)
            throws PlannerException {
        boolean found = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
        Optional<long[]> best = start.filter(values -> programme.broken(values).isEmpty());
        if (found) {
            long[] values = new long[variables.length];
            for (int i = 0; i < values.length; i++) {
                values[i] = Math.round(variables[i].solutionValue());
            }
            boolean better = best.isEmpty() || goal.of(values) < goal.of(best.get());
            if (better && programme.broken(values).isEmpty()) {
                best = Optional.of(values);
            }
        }
        long[] values = best.orElseThrow(() -> new PlannerException(
                "The solver found no plan within its limit of work (%s). Plan parts of the fleet one by one."
                        .formatted(status)));
        long value = goal.of(values);
        return new MilpSolution(values, value, Math.min(value, found ? bound(solver, programme, goal) : least(programme, goal)));
    }

    private static long bound(MPSolver solver, IntegerProgramme programme, Linear goal) {
        double bound = solver.objective().bestBound();
        double safe = bound - Math.max(LEAST_TOLERANCE, Math.abs(bound) * TOLERANCE);
        return Math.max(least(programme, goal), (long) Math.ceil(safe));
    }

    /** What the limits of the variables alone allow. */
    private static long least(IntegerProgramme programme, Linear goal) {
        long[] least = {0};
        goal.forEach((variable, factor) -> {
            IntegerProgramme.Variable each = programme.variables().get(variable);
            least[0] = Math.addExact(least[0], Math.multiplyExact(factor, factor > 0 ? each.low() : each.high()));
        });
        return least[0];
    }
}
