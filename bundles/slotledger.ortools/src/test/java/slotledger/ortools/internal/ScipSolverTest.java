package slotledger.ortools.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slotledger.model.task.Progress;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
import slotledger.solver.MilpSolution;
import slotledger.solver.SolverException;

class ScipSolverTest {

    private static final int NODES = 10_000;

    /**
     * The example of the cutting-stock problem that Wikipedia prints (article "Cutting stock problem", section
     * "Illustration of one-dimensional cutting-stock problem"): a paper machine makes rolls of 5600 mm, 13 widths are
     * ordered, the best plan needs 73 rolls. Typed from memory of the article. Here by its arc-free
     * form: one variable for each way to cut a roll that leaves less than the narrowest width.
     */
    @Test
    void aPublishedCuttingStockExampleIsSolvedAsPrinted() throws SolverException {
        int[] widths = {1380, 1520, 1560, 1710, 1820, 1880, 1930, 2000, 2050, 2100, 2140, 2150, 2200};
        int[] orders = {22, 25, 12, 14, 18, 18, 20, 10, 12, 14, 16, 18, 20};
        IntegerProgramme programme = new IntegerProgramme();
        Linear rolls = new Linear();
        Linear[] cut = new Linear[widths.length];
        for (int i = 0; i < cut.length; i++) {
            cut[i] = new Linear();
        }
        addPatterns(programme, widths, orders, rolls, cut, new int[widths.length], 0, 5600);
        for (int i = 0; i < cut.length; i++) {
            programme.atLeast("width " + widths[i], cut[i], orders[i]);
        }
        MilpSolution best = new ScipSolver()
                .minimise(programme, rolls, NODES, Optional.empty(), Progress.NONE).orElseThrow();
        assertEquals(73, best.value());
        assertTrue(best.isProven());
    }

    private static void addPatterns(IntegerProgramme programme, int[] widths, int[] orders, Linear rolls, Linear[] cut,
            int[] pattern, int width, int left) {
        if (width == widths.length) {
            if (left < widths[0]) {
                int used = programme.variable("", 0, 100);
                rolls.add(used, 1);
                for (int i = 0; i < pattern.length; i++) {
                    if (pattern[i] > 0) {
                        cut[i].add(used, pattern[i]);
                    }
                }
            }
            return;
        }
        for (int count = 0; count * widths[width] <= left; count++) {
            pattern[width] = count;
            addPatterns(programme, widths, orders, rolls, cut, pattern, width + 1, left - count * widths[width]);
        }
        pattern[width] = 0;
    }

    @Test
    void anotherSolverFindsTheSameOptimum() throws SolverException {
        Random random = new Random(7);
        for (int round = 0; round < 30; round++) {
            IntegerProgramme programme = programme(random);
            Linear goal = new Linear();
            for (int i = 0; i < programme.variables().size(); i++) {
                goal.add(i, 1 + random.nextInt(500));
            }
            Optional<MilpSolution> one =
                    new ScipSolver().minimise(programme, goal, NODES, Optional.empty(), Progress.NONE);
            Optional<MilpSolution> other =
                    new CpSatSolver(10).minimise(programme, goal, NODES, Optional.empty(), Progress.NONE);
            assertEquals(other.map(MilpSolution::value), one.map(MilpSolution::value), "round " + round);
            assertTrue(one.map(MilpSolution::isProven).orElse(true), "round " + round);
        }
    }

    private static IntegerProgramme programme(Random random) {
        IntegerProgramme programme = new IntegerProgramme();
        for (int i = 0; i < 12; i++) {
            programme.variable("x" + i, 0, 1 + random.nextInt(9));
        }
        for (int row = 0; row < 6; row++) {
            Linear sum = new Linear();
            for (int i = 0; i < 12; i++) {
                sum.add(i, random.nextInt(5));
            }
            programme.atLeast("row " + row, sum, random.nextInt(110));
        }
        return programme;
    }

    @Test
    void noValuesAtAllAreRecognised() throws SolverException {
        IntegerProgramme programme = new IntegerProgramme();
        int packs = programme.variable("packs", 0, 3);
        programme.atLeast("need", new Linear().add(packs, 2), 7);
        assertEquals(Optional.empty(), new ScipSolver()
                .minimise(programme, new Linear().add(packs, 1), NODES, Optional.empty(), Progress.NONE));
    }

    @Test
    void aSearchThatIsCutShortKeepsAnHonestBound() throws SolverException {
        IntegerProgramme programme = new IntegerProgramme();
        Linear weight = new Linear();
        Linear goal = new Linear();
        Random random = new Random(3);
        for (int i = 0; i < 40; i++) {
            int one = programme.choice("x" + i, 0);
            int size = 1000 + random.nextInt(9000);
            weight.add(one, size);
            goal.add(one, size + random.nextInt(3));
        }
        programme.atLeast("knapsack", weight, 100_001);
        MilpSolution cut = new ScipSolver().minimise(programme, goal, 1, Optional.empty(), Progress.NONE).orElseThrow();
        MilpSolution best =
                new CpSatSolver(30).minimise(programme, goal, 1, Optional.empty(), Progress.NONE).orElseThrow();
        assertTrue(cut.bound() <= best.value() && best.value() <= cut.value());
    }

    @Test
    void nothingIsPrinted() throws SolverException {
        PrintStream out = System.out;
        ByteArrayOutputStream seen = new ByteArrayOutputStream();
        System.setOut(new PrintStream(seen, true, StandardCharsets.UTF_8));
        try {
            noValuesAtAllAreRecognised();
        } finally {
            System.setOut(out);
        }
        assertEquals("", seen.toString(StandardCharsets.UTF_8));
    }
}
