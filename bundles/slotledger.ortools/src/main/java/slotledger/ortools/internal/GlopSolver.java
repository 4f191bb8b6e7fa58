package slotledger.ortools.internal;

import com.google.ortools.linearsolver.MPSolver;
import slotledger.lib.solver.NativeSolver;
import slotledger.lib.solver.NativeSolverException;
import slotledger.solver.LinearSolver;
import slotledger.solver.SolverException;

/** GLOP in OR-Tools: a simplex method on one thread, without limits of time. */
final class GlopSolver implements LinearSolver {

    @Override
    public Session open(double[] rowLows, double[] rowHighs) throws SolverException {
        try {
            NativeSolver.load();
        } catch (NativeSolverException e) {
            throw new SolverException(e.getMessage(), e);
        }
        return new GlopSession(MPSolver.createSolver("GLOP"), rowLows, rowHighs);
    }
}
