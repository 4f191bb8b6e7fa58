package slotledger.ojalgo.internal;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slotledger.model.task.Progress;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
import slotledger.solver.MilpSolution;
import slotledger.solver.SolverException;

class OjalgoSolverTest {

    private static final int NODES = 100_000;

    private static Optional<MilpSolution> solve(IntegerProgramme programme, Linear goal, int nodes)
            throws SolverException {
        return new OjalgoSolver().minimise(programme, goal, nodes, Optional.empty(), Progress.NONE);
    }

    @Test
    void smallProgrammesAreSolvedAsTryingEverythingDoes() throws SolverException {
        Random random = new Random(11);
        int impossible = 0;
        for (int round = 0; round < 400; round++) {
            IntegerProgramme programme = programme(random);
            Linear goal = new Linear();
            for (int i = 0; i < programme.size(); i++) {
                goal.add(i, random.nextInt(41) - 20);
            }
            long best = tryAll(programme, goal, new long[programme.size()], 0, Long.MAX_VALUE);
            Optional<MilpSolution> found = solve(programme, goal, NODES);
            assertEquals(best != Long.MAX_VALUE, found.isPresent(), "round " + round);
            if (found.isPresent()) {
                assertEquals(best, found.get().value(), "round " + round);
                assertTrue(found.get().isProven(), "round " + round);
                assertEquals(Optional.empty(), programme.broken(found.get().values()), "round " + round);
            } else {
                impossible++;
            }
        }
        assertTrue(impossible > 20 && impossible < 300, impossible + " without values");
    }

    private static long tryAll(IntegerProgramme programme, Linear goal, long[] values, int variable, long best) {
        if (variable == values.length) {
            return programme.broken(values).isEmpty() ? Math.min(best, goal.of(values)) : best;
        }
        long least = best;
        for (long each = programme.low(variable); each <= programme.high(variable); each++) {
            values[variable] = each;
            least = tryAll(programme, goal, values, variable + 1, least);
        }
        return least;
    }

    private static IntegerProgramme programme(Random random) {
        IntegerProgramme programme = new IntegerProgramme();
        for (int i = 0; i < 6; i++) {
            int low = random.nextInt(4) - 2;
            programme.variable("x" + i, low, low + random.nextInt(4), random.nextInt(3));
        }
        for (int row = 0; row < 2 + random.nextInt(3); row++) {
            Linear sum = new Linear();
            for (int i = 0; i < 6; i++) {
                sum.add(i, random.nextInt(19) - 9);
            }
            switch (random.nextInt(5)) {
                case 0 -> programme.equal("row", sum, random.nextInt(9) - 4);
                case 1, 2 -> programme.atLeast("row", sum, random.nextInt(40) - 25);
                default -> programme.atMost("row", sum, random.nextInt(40) - 15);
            }
        }
        return programme;
    }

    @Test
    void aSearchThatIsCutShortKeepsATrueBound() throws SolverException {
        IntegerProgramme programme = new IntegerProgramme();
        Linear weight = new Linear();
        Linear goal = new Linear();
        Random random = new Random(3);
        for (int i = 0; i < 20; i++) {
            int one = programme.choice("x" + i, 0);
            int size = 1000 + random.nextInt(9000);
            weight.add(one, size);
            goal.add(one, size + random.nextInt(3));
        }
        programme.atLeast("knapsack", weight, 50_001);
        long[] all = new long[20];
        Arrays.fill(all, 1);
        MilpSolution cut = new OjalgoSolver()
                .minimise(programme, goal, 3, Optional.of(all), Progress.NONE).orElseThrow();
        long best = tryAll(programme, goal, new long[20], 0, Long.MAX_VALUE);
        assertTrue(cut.bound() <= best && best <= cut.value(), cut + " " + best);
        assertTrue(cut.bound() > 0 && !cut.isProven(), cut.toString());
    }

    @Test
    void theSameProgrammeGivesTheSameValues() throws SolverException {
        IntegerProgramme programme = new IntegerProgramme();
        Linear goal = new Linear();
        Linear sum = new Linear();
        for (int i = 0; i < 9; i++) {
            goal.add(programme.variable("x" + i, 0, 5), 7);
            sum.add(i, 3 + i % 3);
        }
        programme.atLeast("need", sum, 53);
        assertArrayEquals(
                solve(programme, goal, NODES).orElseThrow().values(),
                solve(programme, goal, NODES).orElseThrow().values());
    }

    @Test
    void aSearchWithoutValuesIsNoProofThatThereAreNone() {
        IntegerProgramme programme = new IntegerProgramme();
        Linear sum = new Linear();
        for (int i = 0; i < 12; i++) {
            sum.add(programme.variable("x" + i, 0, 9), 1000 + 37L * i * i);
        }
        programme.equal("exactly", sum, 23_456);
        assertThrows(SolverException.class, () -> solve(programme, sum, 1));
    }
}
