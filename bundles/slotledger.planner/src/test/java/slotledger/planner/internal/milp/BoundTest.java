package slotledger.planner.internal.milp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.internal.milp.Lexicographic.Answer;
import slotledger.planner.internal.milp.Lexicographic.Goal;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
import slotledger.solver.SolverException;

class BoundTest {

    private static final int NODES = 1000;
    private static final long NONE = Long.MAX_VALUE;

    @Test
    void noBoundIsAboveTheBestValuesWhateverThePrices() {
        Random random = new Random(11);
        int possible = 0;
        for (int round = 0; round < 3000; round++) {
            IntegerProgramme programme = programme(random);
            long[] cost = random.longs(programme.size(), -20, 50).toArray();
            long best = best(programme, cost);
            Bound bound = new Bound(new Columns(programme, List.of()), cost, new Box(programme));
            for (int tries = 0; tries < 5; tries++) {
                bound.at(bound.round(random.doubles(bound.columns().rows, -60, 60).toArray()));
                assertTrue(bound.value() <= best, "round " + round);
            }
            possible += best == NONE ? 0 : 1;
        }
        assertTrue(possible > 1000, possible + " programmes with values");
    }

    @Test
    void narrowerLimitsKeepEverythingThatIsBetter() {
        Random random = new Random(12);
        for (int round = 0; round < 2000; round++) {
            IntegerProgramme programme = programme(random);
            long[] cost = random.longs(programme.size(), 0, 50).toArray();
            long best = best(programme, cost);
            Box box = new Box(programme);
            Bound bound = new Bound(new Columns(programme, List.of()), cost, new Box(programme));
            bound.at(bound.round(random.doubles(bound.columns().rows, -9, 9).toArray()));
            if (best != NONE) {
                long most = best + random.nextInt(40);
                box.narrow(bound, most);
                each(programme, new long[programme.size()], 0, values ->
                        assertTrue(value(cost, values) > most || box.holds(values)));
            }
        }
    }

    @Test
    void theSearchFindsTheBestOfAll() throws SolverException {
        Random random = new Random(13);
        for (int round = 0; round < 100; round++) {
            IntegerProgramme programme = programme(random);
            long[] cost = random.longs(programme.size(), -20, 50).toArray();
            long best = best(programme, cost);
            Optional<Search.Found> found = new Search(new ScipSolver(), programme, List.of(), Progress.NONE)
                    .minimise(cost, new Box(programme), NODES, 0, Optional.empty());
            assertEquals(best, found.map(Search.Found::value).orElse(NONE), "round " + round);
            found.ifPresent(each -> {
                assertEquals(best, each.bound());
                assertTrue(each.safe() <= best);
            });
        }
    }

    /** A hundred machines each take two modules of 7 or one of 16; twenty of the second are to be had. */
    @Test
    void aCancelledSearchKeepsWhatItHas() throws SolverException {
        IntegerProgramme programme = new IntegerProgramme();
        int first = programme.variables(2, 0, 100, 0, place -> "way " + place);
        programme.equal("machines", new Linear().add(first, 1).add(first + 1, 1), 100);
        programme.atMost("modules", new Linear().add(first + 1, 1), 20);
        Goal cost = new Goal("money", new Linear().add(first, 20).add(first + 1, 16), NODES);
        Goal work = new Goal("work", new Linear().add(first, 2).add(first + 1, 1), NODES);
        Progress cancelled = new Progress() {
            @Override
            public void step(String what, double done) {
                // nobody watches
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        long[] start = {100, 0};
        Answer cut = new Lexicographic(new ScipSolver()).minimise(programme, List.of(cost, work), start, cancelled);
        assertTrue(cut.isCut());
        assertTrue(cut.steps().get(0).bound() <= 1920 && cut.steps().get(0).value() <= 2000);
        Answer best = new Lexicographic(new ScipSolver())
                .minimise(programme, List.of(cost, work), start, Progress.NONE);
        assertEquals(1920, best.steps().get(0).value());
        assertEquals(1920, best.safe().get(0));
    }

    private static IntegerProgramme programme(Random random) {
        IntegerProgramme programme = new IntegerProgramme();
        for (int group = 0; group < 2; group++) {
            int size = 1 + random.nextInt(3);
            int first = programme.variables(2, 0, size, 0, place -> "way " + place);
            programme.equal("group", new Linear().add(first, 1).add(first + 1, 1), size);
        }
        programme.variable("packs", 0, 1 + random.nextInt(3));
        programme.choice("used", 1);
        for (int row = 0; row < 3; row++) {
            Linear sum = new Linear();
            for (int variable = 0; variable < programme.size(); variable++) {
                sum.add(variable, random.nextInt(7) - 3);
            }
            if (random.nextBoolean()) {
                programme.atMost("most", sum, random.nextInt(8) - 2);
            } else {
                programme.atLeast("least", sum, random.nextInt(8) - 5);
            }
        }
        return programme;
    }

    private static long best(IntegerProgramme programme, long[] cost) {
        long[] best = {NONE};
        each(programme, new long[programme.size()], 0, values -> best[0] = Math.min(best[0], value(cost, values)));
        return best[0];
    }

    private interface Visitor {
        void visit(long[] values);
    }

    private static void each(IntegerProgramme programme, long[] values, int variable, Visitor visitor) {
        if (variable == values.length) {
            if (programme.broken(values).isEmpty()) {
                visitor.visit(values);
            }
            return;
        }
        for (long value = programme.low(variable); value <= programme.high(variable); value++) {
            values[variable] = value;
            each(programme, values, variable + 1, visitor);
        }
    }

    private static long value(long[] cost, long[] values) {
        long sum = 0;
        for (int i = 0; i < values.length; i++) {
            sum += cost[i] * values[i];
        }
        return sum;
    }
}
