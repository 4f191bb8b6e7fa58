package slotledger.ortools.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.solver.LinearSolver;
import slotledger.solver.LinearSolver.Outcome;
import slotledger.solver.SolverException;

class GlopSolverTest {

    private static final double NEAR = 1e-9;

    @Test
    void aColumnThatIsAddedTakesOver() throws SolverException {
        double[] lows = {10, LinearSolver.NO_LOW};
        double[] highs = {LinearSolver.NO_HIGH, 6};
        try (LinearSolver.Session session = new GlopSolver().open(lows, highs)) {
            int dear = session.add(0, 100, 3, new int[] {0}, new double[] {1});
            assertEquals(Outcome.LEAST, session.solve());
            assertArrayEquals(new double[] {10}, session.values(), NEAR);
            assertArrayEquals(new double[] {3, 0}, session.prices(), NEAR);

            session.add(0, 100, 2, new int[] {0, 1}, new double[] {1, 1});
            assertEquals(Outcome.LEAST, session.solve());
            assertArrayEquals(new double[] {4, 6}, session.values(), NEAR);
            assertArrayEquals(new double[] {3, -1}, session.prices(), NEAR);

            session.bound(dear, 0, 1);
            assertEquals(Outcome.IMPOSSIBLE, session.solve());
            session.bound(dear, 7, 100);
            session.cost(dear, 1);
            assertEquals(Outcome.LEAST, session.solve());
            assertArrayEquals(new double[] {10, 0}, session.values(), NEAR);
        }
    }
}
