package slotledger.ojalgo.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/** Examples with published optima, solved by both solvers. The source of each stands above it. */
class PublishedExamplesTest {

    private static final int NODES = 20_000;

    private static void assertOptimum(long expected, IntegerProgramme programme, Linear goal) throws SolverException {
        for (MilpSolver solver : List.of(new ScipSolver(), new OjalgoSolver())) {
            MilpSolution best =
                    solver.minimise(programme, goal, NODES, Optional.empty(), Progress.NONE).orElseThrow();
            assertEquals(expected, best.value(), solver.name());
            assertTrue(best.isProven(), solver.name() + " leaves a gap: " + best.bound());
        }
    }

    /**
     * V. Chvatal, Linear Programming, 1983, chapter 13: rolls of 100 inches are cut into 97 of 45 inches, 610 of 36,
     * 395 of 31 and 211 of 14. The least cost of the relaxation is 452.25, so that 453 rolls are needed (from memory).
     */
    @Test
    void chvatalsCuttingStockNeeds453Rolls() throws SolverException {
        int[] widths = {45, 36, 31, 14};
        int[] orders = {97, 610, 395, 211};
        IntegerProgramme programme = new IntegerProgramme();
        Linear rolls = new Linear();
        List<Linear> cut = List.of(new Linear(), new Linear(), new Linear(), new Linear());
        for (int a = 0; a <= 2; a++) {
            for (int b = 0; a * 45 + b * 36 <= 100; b++) {
                for (int c = 0; a * 45 + b * 36 + c * 31 <= 100; c++) {
                    int d = (100 - a * 45 - b * 36 - c * 31) / 14;
                    int used = programme.variable("pattern", 0, 610);
                    rolls.add(used, 1);
                    cut.get(0).add(used, a);
                    cut.get(1).add(used, b);
                    cut.get(2).add(used, c);
                    cut.get(3).add(used, d);
                }
            }
        }
        for (int i = 0; i < widths.length; i++) {
            programme.atLeast("width " + widths[i], cut.get(i), orders[i]);
        }
        assertOptimum(453, programme, rolls);
    }

    /**
     * D. R. Fulkerson, G. L. Nemhauser, L. E. Trotter, Two computationally difficult set covering problems that arise
     * in computing the 1-width of incidence matrices of Steiner triple systems, 1974: the triple system of 9 points has
     * width 5 (from memory). Its triples are the lines of the affine plane of order 3: points that add up to 0.
     */
    @Test
    void theSteinerTripleSystemOfNinePointsIsCoveredByFive() throws SolverException {
        IntegerProgramme programme = new IntegerProgramme();
        Linear chosen = triples(programme, 2);
        assertEquals(12, programme.rows().size());
        assertOptimum(5, programme, chosen);
    }

    /** As above, 27 points and 117 triples: width 18 (from memory). */
    @Test
    void theSteinerTripleSystemOf27PointsIsCoveredBy18() throws SolverException {
        IntegerProgramme programme = new IntegerProgramme();
        Linear chosen = triples(programme, 3);
        assertEquals(117, programme.rows().size());
        assertOptimum(18, programme, chosen);
    }

    private static Linear triples(IntegerProgramme programme, int digits) {
        int points = (int) Math.pow(3, digits);
        Linear chosen = new Linear();
        for (int i = 0; i < points; i++) {
            chosen.add(programme.choice("point " + i, 0), 1);
        }
        for (int a = 0; a < points; a++) {
            for (int b = a + 1; b < points; b++) {
                int c = third(a, b);
                if (c > b) {
                    programme.atLeast("triple", new Linear().add(a, 1).add(b, 1).add(c, 1), 1);
                }
            }
        }
        return chosen;
    }

    private static int third(int a, int b) {
        return a == 0 && b == 0 ? 0 : third(a / 3, b / 3) * 3 + (6 - a % 3 - b % 3) % 3;
    }

    /**
     * Incremental discounts: W. L. Winston, Operations Research, section 9.2, the example of Euing Gas (from memory).
     * 500 gallons of oil 1 and 1000 of oil 2 are there; up to 1500 of oil 1 are bought at 25, 20 and 15 cents for each
     * 500. Gas 1 (at least half oil 1) sells at 12 cents, gas 2 (at least 60 % oil 1) at 14. Printed answer: 12,500
     * cents with 1000 gallons bought.
     */
    @Test
    void euingGasBuysAThousandGallonsAtIncrementalPrices() throws SolverException {
        IntegerProgramme programme = new IntegerProgramme();
        int oneInOne = programme.variable("oil 1 in gas 1", 0, 2000);
        int oneInTwo = programme.variable("oil 1 in gas 2", 0, 2000);
        int twoInOne = programme.variable("oil 2 in gas 1", 0, 1000);
        int twoInTwo = programme.variable("oil 2 in gas 2", 0, 1000);
        Linear bought = new Linear();
        Linear goal = new Linear().add(oneInOne, -12).add(twoInOne, -12).add(oneInTwo, -14).add(twoInTwo, -14);
        int[] prices = {25, 20, 15};
        int before = -1;
        int beforeFull = -1;
        for (int price : prices) {
            int part = programme.variable("bought at " + price, 0, 500);
            bought.add(part, 1);
            goal.add(part, price);
            if (before >= 0) {
                int full = programme.choice("all before " + price, 1);
                programme.atMost("only after the part before", new Linear().add(part, 1).add(full, -500), 0);
                programme.atLeast("part before is full", new Linear().add(before, 1).add(full, -500), 0);
                if (beforeFull >= 0) {
                    programme.atMost("in order", new Linear().add(full, 1).add(beforeFull, -1), 0);
                }
                beforeFull = full;
            }
            before = part;
        }
        programme.atMost("oil 1", new Linear().add(oneInOne, 1).add(oneInTwo, 1).add(bought, -1), 500);
        programme.atMost("oil 2", new Linear().add(twoInOne, 1).add(twoInTwo, 1), 1000);
        programme.atLeast("half of gas 1", new Linear().add(oneInOne, 1).add(twoInOne, -1), 0);
        programme.atLeast("60 % of gas 2", new Linear().add(oneInTwo, 2).add(twoInTwo, -3), 0);
        assertOptimum(-12_500, programme, goal);
    }

    /**
     * All-unit and incremental discounts side by side: the data of the model QdiscSupL in the library of LINDO Systems
     * (lindo.com). 6000 are needed; vendor A's price holds for all (9, from 1000 on 8, 2500: 7, 7500: 5, 15000: 3),
     * vendor B's for those past a step (8, from 1200 on 7, 3000: 6, 7500: 4, 14000: 2). By hand: A alone costs 42,000
     * for 6000 and 37,500 for 7500; B alone 9600 + 12,600 + 18,000 = 40,200.
     */
    @Test
    void buyingMoreThanNeededAtTheNextAllUnitStepIsCheapest() throws SolverException {
        IntegerProgramme programme = new IntegerProgramme();
        Linear cost = new Linear();
        Linear all = vendor(programme, cost, new long[] {0, 1000, 2500, 7500, 15_000, 20_000},
                new long[] {9, 8, 7, 5, 3}, false);
        all.add(vendor(programme, cost, new long[] {0, 1200, 3000, 7500, 14_000, 20_000},
                new long[] {8, 7, 6, 4, 2}, true), 1);
        programme.atLeast("need", all, 6000);
        assertOptimum(37_500, programme, cost);
    }

    /** Of each step: lo z <= q <= hi z, cost fixed z + price q, at most one step; the form of the planner's rows. */
    private static Linear vendor(
            IntegerProgramme programme, Linear cost, long[] from, long[] prices, boolean isIncremental) {
        Linear quantity = new Linear();
        Linear chosen = new Linear();
        long before = 0;
        for (int i = 0; i < prices.length; i++) {
            int step = programme.choice("price " + prices[i], 2);
            int bought = programme.variable("bought at " + prices[i], 0, from[i + 1], 1);
            programme.atLeast("low", new Linear().add(bought, 1).add(step, -from[i]), 0);
            programme.atMost("high", new Linear().add(bought, 1).add(step, -from[i + 1]), 0);
            cost.add(bought, prices[i]).add(step, isIncremental ? before - prices[i] * from[i] : 0);
            before += prices[i] * (from[i + 1] - from[i]);
            quantity.add(bought, 1);
            chosen.add(step, 1);
        }
        programme.atMost("one price", chosen, 1);
        return quantity;
    }
}
