package slotledger.planner.internal.milp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
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
import slotledger.solver.MilpSolution;
import slotledger.solver.SolverException;

/** Fleets too large to be searched to the end, held against a search to the end. */
class RoundingTest {

    private static final int ROUNDS = 20;
    private static final int CLASSES = 16;
    private static final int WAYS = 5;
    private static final int KINDS = 6;
    private static final int NODES = 5000;
    private static final int TO_THE_END = 100_000;

    private record Fleet(IntegerProgramme programme, Linear missed, Linear money) {
    }

    /** Modules come in packs of several, a second offer is cheaper from a number of packs on, and some stock ends. */
    private static Fleet fleet(Random random) {
        IntegerProgramme programme = new IntegerProgramme();
        Linear missed = new Linear();
        Linear money = new Linear();
        List<Linear> needs = new ArrayList<>();
        for (int kind = 0; kind < KINDS; kind++) {
            needs.add(new Linear());
        }
        for (int group = 0; group < CLASSES; group++) {
            int size = 400 + random.nextInt(400);
            int first = programme.variables(WAYS, 0, size, 0, place -> "way " + place);
            Linear all = new Linear();
            for (int way = 0; way < WAYS; way++) {
                all.add(first + way, 1);
                if (way > 0) {
                    needs.get(random.nextInt(KINDS)).add(first + way, 1 + random.nextInt(3));
                    needs.get(random.nextInt(KINDS)).add(first + way, -random.nextInt(2));
                    money.add(first + way, 100 + random.nextInt(300));
                }
            }
            missed.add(first, 1 + random.nextInt(3));
            programme.equal("machines", all, size);
        }
        boolean isScarce = random.nextInt(3) == 0;
        for (int kind = 0; kind < KINDS; kind++) {
            long price = 1000 + random.nextInt(2000);
            int pack = 1 + random.nextInt(3);
            int few = programme.variable("few", 0, isScarce || random.nextInt(3) == 0 ? 300 : 30_000, 1);
            int many = programme.variable("many", 0, isScarce ? 400 : 30_000, 1);
            int choice = programme.choice("many", 2);
            programme.atMost("many", new Linear().add(many, 1).add(choice, -30_000), 0);
            programme.atLeast("many", new Linear().add(many, 1).add(choice, -200 - random.nextInt(800)), 0);
            money.add(few, price);
            money.add(many, price * 93 / 100 * pack);
            programme.atMost("modules", needs.get(kind).add(few, -1).add(many, -pack), random.nextInt(50));
        }
        return new Fleet(programme, missed, money);
    }

    @Test
    void aLargeFleetIsNearTheBestOfAllAndItsBoundHolds() throws SolverException {
        int exact = 0;
        int impossible = 0;
        for (int round = 0; round < ROUNDS; round++) {
            Fleet fleet = fleet(new Random(round));
            IntegerProgramme programme = fleet.programme();
            long[] nothing = new long[programme.size()];
            for (int group = 0; group < CLASSES; group++) {
                nothing[group * WAYS] = programme.high(group * WAYS);
            }
            long all = fleet.missed().of(nothing);
            Answer answer = new Lexicographic(new ScipSolver()).minimise(programme, List.of(
                    new Goal("missed", fleet.missed(), NODES, all), new Goal("money", fleet.money(), NODES)),
                    nothing, Progress.NONE);
            assertEquals(Optional.empty(), programme.broken(answer.values()));

            MilpSolution first = best(programme, fleet.missed());
            MilpSolution found = answer.steps().get(0);
            assertTrue(found.bound() <= first.value() && first.value() <= found.value(), "round " + round);
            assertTrue(answer.safe().get(0) <= first.value(), "round " + round);
            assertTrue(found.value() - first.value() <= all / 1000, round + ": " + found + " " + first);
            programme.atMost("missed", fleet.missed(), found.value());
            MilpSolution second = best(programme, fleet.money());
            found = answer.steps().get(1);
            assertTrue(found.bound() <= second.value() && second.value() <= found.value(), "round " + round);
            assertTrue(answer.safe().get(1) <= second.value(), "round " + round);
            assertTrue(found.value() - second.value() <= second.value() / 1000, round + ": " + found + " " + second);
            exact += found.value() == second.value() ? 1 : 0;
            impossible += first.value() > 0 ? 1 : 0;
        }
        System.out.printf("%d fleets, %d as cheap as the best, %d with machines missed%n", ROUNDS, exact, impossible);
        assertTrue(impossible > ROUNDS / 10, impossible + " with machines missed");
    }

    private static MilpSolution best(IntegerProgramme programme, Linear goal) throws SolverException {
        MilpSolution best = new ScipSolver()
                .minimise(programme, goal, TO_THE_END, Optional.empty(), Progress.NONE).orElseThrow();
        assertEquals(best.value(), best.bound());
        return best;
    }
}
