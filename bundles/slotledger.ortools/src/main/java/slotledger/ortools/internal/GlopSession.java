package slotledger.ortools.internal;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPSolverParameters;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;
import slotledger.solver.LinearSolver;

/** A programme inside GLOP, which keeps its basis from one solve to the next. */
final class GlopSession implements LinearSolver.Session {

    private final MPSolver solver;
    private final MPObjective goal;
    private final List<MPVariable> columns = new ArrayList<>();
    private final MPConstraint[] rows;
    private final MPSolverParameters incremental = new MPSolverParameters();

    GlopSession(MPSolver solver, double[] rowLows, double[] rowHighs) {
        this.solver = solver;
        solver.suppressOutput();
        goal = solver.objective();
        goal.setMinimization();
        rows = new MPConstraint[rowLows.length];
        for (int row = 0; row < rows.length; row++) {
            rows[row] = solver.makeConstraint(rowLows[row], rowHighs[row]);
        }
        incremental.setIntegerParam(
                MPSolverParameters.IntegerParam.INCREMENTALITY,
                MPSolverParameters.IncrementalityValues.INCREMENTALITY_ON.swigValue());
        incremental.setIntegerParam(
                MPSolverParameters.IntegerParam.PRESOLVE,
                MPSolverParameters.PresolveValues.PRESOLVE_OFF.swigValue());
    }

    @Override
    public int add(double low, double high, double cost, int[] inRows, double[] factors) {
        MPVariable column = solver.makeNumVar(low, high, "");
        for (int i = 0; i < inRows.length; i++) {
            rows[inRows[i]].setCoefficient(column, factors[i]);
        }
        goal.setCoefficient(column, cost);
        columns.add(column);
        return columns.size() - 1;
    }

    @Override
    public void bound(int column, double low, double high) {
        columns.get(column).setBounds(low, high);
    }

    @Override
    public void cost(int column, double cost) {
        goal.setCoefficient(columns.get(column), cost);
    }

    @Override
    public LinearSolver.Outcome solve() {
        return switch (solver.solve(incremental)) {
            case OPTIMAL -> LinearSolver.Outcome.LEAST;
            case INFEASIBLE -> LinearSolver.Outcome.IMPOSSIBLE;
            case FEASIBLE, UNBOUNDED, ABNORMAL, MODEL_INVALID, NOT_SOLVED -> LinearSolver.Outcome.UNKNOWN;
        };
    }

    @Override
    public double[] values() {
        return columns.stream().mapToDouble(MPVariable::solutionValue).toArray();
    }

    @Override
    public double[] prices() {
        double[] prices = new double[rows.length];
        for (int row = 0; row < rows.length; row++) {
            prices[row] = rows[row].dualValue();
        }
        return prices;
    }

    @Override
    public void close() {
        solver.delete();
    }
}
