package slotledger.lib.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;

import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import org.junit.jupiter.api.Test;
import slotledger.lib.solver.internal.Platform;

class NativeSolverTest {

    @Test
    void aSmallIntegerProgrammeIsSolvedByHighs() throws NativeSolverException {
        NativeSolver.load();
        MPSolver solver = MPSolver.createSolver("HIGHS");
        MPVariable packs = solver.makeIntVar(0, 100, "packs");
        solver.makeConstraint(7, Double.POSITIVE_INFINITY, "modules needed").setCoefficient(packs, 2);
        solver.objective().setCoefficient(packs, 1);
        assertEquals(MPSolver.ResultStatus.OPTIMAL, solver.solve());
        assertEquals(4, Math.round(packs.solutionValue()), "seven modules need four packs of two");
    }

    @Test
    void loadingAgainReturnsTheSameFolder() throws NativeSolverException {
        assertEquals(NativeSolver.load(), NativeSolver.load());
    }

    @Test
    void platformsAreNamedAsTheArtifactsAre() {
        assertEquals("linux-x86-64", Platform.name("Linux", "amd64"));
        assertEquals("win32-x86-64", Platform.name("Windows 11", "amd64"));
        assertEquals("darwin-aarch64", Platform.name("Mac OS X", "aarch64"));
    }
}
