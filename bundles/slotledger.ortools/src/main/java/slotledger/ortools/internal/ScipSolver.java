package slotledger.ortools.internal;

import com.google.ortools.linearsolver.MPConstraintProto;
import com.google.ortools.linearsolver.MPModelProto;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariableProto;
import com.google.ortools.linearsolver.PartialVariableAssignment;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.lib.solver.NativeSolver;
import slotledger.lib.solver.NativeSolverException;
import slotledger.model.task.Progress;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
import slotledger.solver.LinearSolver;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/**
 * SCIP in OR-Tools. It runs on one thread and is limited by the nodes of its search tree, never by the clock, so that
 * every run gives the same answer. It computes in floating point: its values are rounded and checked exactly, its
 * bound is rounded away from the value by its own tolerance.
 */
@Component(property = "service.ranking:Integer=100")
public final class ScipSolver implements MilpSolver {

    /** Relative tolerance of a bound (SCIP's feasibility tolerance is 1e-6, of an equation 1e-9). */
    private static final double TOLERANCE = 1e-9;
    private static final double LEAST_TOLERANCE = 1e-4;

    @Override
    public String name() {
        return "SCIP (OR-Tools)";
    }

    @Override
    public Optional<String> hindrance() {
        try {
            NativeSolver.load();
            return Optional.empty();
        } catch (NativeSolverException e) {
            return Optional.of(e.getMessage());
        }
    }

    @Override
    public Optional<LinearSolver> linear() {
        return Optional.of(new GlopSolver());
    }

    @Override
    public Optional<MilpSolution> minimise(
            IntegerProgramme programme, Linear goal, int mostNodes, Optional<long[]> start, Progress progress)
            throws SolverException {
        load();
        MPSolver solver = MPSolver.createSolver("SCIP");
        try {
            solver.suppressOutput();
            String refusal = solver.loadModelFromProto(model(programme, goal, start));
            if (!refusal.isEmpty()) {
                throw new IllegalStateException("The solver must take the programme: " + refusal);
            }
            solver.setSolverSpecificParametersAsString("limits/nodes = " + mostNodes);
            MPSolverParameters exact = new MPSolverParameters();
            exact.setDoubleParam(MPSolverParameters.DoubleParam.RELATIVE_MIP_GAP, 0);
            MPSolver.ResultStatus status =
                    Canceller.run(() -> solver.solve(exact), solver::interruptSolve, progress);
            if (status == MPSolver.ResultStatus.INFEASIBLE && start.isEmpty() && !progress.isCancelled()) {
                return Optional.empty();
            }
            return Optional.of(solution(programme, goal, solver, status, start));
        } finally {
            solver.delete();
        }
    }

    private static void load() throws SolverException {
        try {
            NativeSolver.load();
        } catch (NativeSolverException e) {
            throw new SolverException(e.getMessage(), e);
        }
    }

    private static MPModelProto model(IntegerProgramme programme, Linear goal, Optional<long[]> start) {
        double[] factors = new double[programme.size()];
        goal.forEach((variable, factor) -> factors[variable] = factor);
        MPModelProto.Builder model = MPModelProto.newBuilder();
        for (int i = 0; i < factors.length; i++) {
            model.addVariable(MPVariableProto.newBuilder()
                    .setIsInteger(true)
                    .setLowerBound(programme.low(i))
                    .setUpperBound(programme.high(i))
                    .setObjectiveCoefficient(factors[i])
                    .setBranchingPriority(programme.first(i)));
        }
        for (IntegerProgramme.Row row : programme.rows()) {
            MPConstraintProto.Builder made = MPConstraintProto.newBuilder();
            if (row.low() != IntegerProgramme.NO_LOW) {
                made.setLowerBound(row.low());
            }
            if (row.high() != IntegerProgramme.NO_HIGH) {
                made.setUpperBound(row.high());
            }
            row.sum().forEach((variable, factor) -> made.addVarIndex(variable).addCoefficient(factor));
            model.addConstraint(made);
        }
        start.ifPresent(values -> model.setSolutionHint(hint(values)));
        return model.build();
    }

    private static PartialVariableAssignment hint(long[] values) {
        PartialVariableAssignment.Builder hint = PartialVariableAssignment.newBuilder();
        for (int i = 0; i < values.length; i++) {
            hint.addVarIndex(i).addVarValue(values[i]);
        }
        return hint.build();
    }

    private static MilpSolution solution(
            IntegerProgramme programme,
            Linear goal,
            MPSolver solver,
            MPSolver.ResultStatus status,
            Optional<long[]> start)
            throws SolverException {
        boolean found = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
        Optional<long[]> best = start.filter(values -> programme.broken(values).isEmpty());
        if (found) {
            long[] values = new long[programme.size()];
            for (int i = 0; i < values.length; i++) {
                values[i] = Math.round(solver.variable(i).solutionValue());
            }
            boolean better = best.isEmpty() || goal.of(values) < goal.of(best.get());
            if (better && programme.broken(values).isEmpty()) {
                best = Optional.of(values);
            }
        }
        long[] values = best.orElseThrow(() -> new SolverException(
                "The solver found no plan within its limit of work (%s). Plan parts of the fleet one by one."
                        .formatted(status)));
        long value = goal.of(values);
        long bound = found ? bound(solver, programme, goal) : least(programme, goal);
        return new MilpSolution(values, value, Math.min(value, bound));
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
            long each = factor > 0 ? programme.low(variable) : programme.high(variable);
            least[0] = Math.addExact(least[0], Math.multiplyExact(factor, each));
        });
        return least[0];
    }
}
