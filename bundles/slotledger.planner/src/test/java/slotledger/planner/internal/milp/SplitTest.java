package slotledger.planner.internal.milp;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Random;
import java.util.function.Consumer;
import java.util.function.Predicate;
import org.junit.jupiter.api.Test;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.Linear;

/** Two classes that share nothing but a supplier, who charges for delivery and wants an order of some size. */
class SplitTest {

    private static final int ROUNDS = 100;
    private static final int NODES = 1000;
    private static final int PARTS = 2;
    private static final int PART = 4;
    private static final int USED = PARTS * PART;

    private final Random random = new Random(21);

    @Test
    void thePartsTogetherAreTheBestOfAll() {
        int proven = 0;
        int branched = 0;
        for (int round = 0; round < ROUNDS; round++) {
            IntegerProgramme programme = programme();
            long[] cost = cost();
            Optional<Split.Result> found = split(programme, cost);
            OptionalLong best = least(cost, values -> programme.broken(values).isEmpty());
            if (found.isEmpty() || best.isEmpty()) {
                assertEquals(best.isPresent(), found.isPresent(), "round " + round);
                continue;
            }
            Split.Result result = found.get();
            assertTrue(result.bound() <= best.getAsLong(), "round " + round);
            assertTrue(result.safe() <= best.getAsLong(), "round " + round);
            result.found().ifPresent(values -> {
                assertEquals(Optional.empty(), programme.broken(values));
                assertTrue(Search.value(cost, values) >= best.getAsLong());
            });
            if (!result.isStuck()) {
                assertEquals(best.getAsLong(), result.bound(), "round " + round);
                assertEquals(best.getAsLong(), Search.value(cost, result.found().orElseThrow()));
                proven++;
                branched += result.safe() < result.bound() ? 1 : 0;
            }
        }
        assertTrue(proven > ROUNDS / 6 && branched > ROUNDS / 10, proven + " proven, " + branched + " after branching");
    }

    @Test
    void tiesAreBrokenPartByPartWithoutLosingWhatWasReached() {
        int better = 0;
        for (int round = 0; round < ROUNDS; round++) {
            IntegerProgramme programme = programme();
            long[] cost = cost();
            long[] second = random.longs(programme.size(), 0, 30).toArray();
            Optional<long[]> start = split(programme, cost).flatMap(Split.Result::found);
            if (start.isEmpty()) {
                continue;
            }
            long[] before = start.get();
            Linear goal = new Linear();
            for (int variable = 0; variable < cost.length; variable++) {
                goal.add(variable, cost[variable]);
            }
            Row reached = new Row("money", IntegerProgramme.NO_LOW, goal, goal.of(before), true);
            long[] found = new Ties(new ScipSolver(), programme, List.of(reached), Progress.NONE)
                    .minimise(second, new Box(programme), NODES, before);
            OptionalLong best = least(second, values -> programme.broken(values).isEmpty()
                    && values[USED] == before[USED] && values[USED + 1] == before[USED + 1]
                    && isNoDearer(cost, values, before));
            assertEquals(Optional.empty(), programme.broken(found));
            assertTrue(goal.of(found) <= goal.of(before), "round " + round);
            assertTrue(Search.value(second, found) <= Search.value(second, before));
            assertTrue(Search.value(second, found) >= best.getAsLong());
            better += Search.value(second, found) < Search.value(second, before) ? 1 : 0;
        }
        assertTrue(better > ROUNDS / 20, better + " better");
    }

    private static boolean isNoDearer(long[] cost, long[] values, long[] before) {
        for (int part = 0; part < PARTS; part++) {
            long more = 0;
            for (int i = part * PART; i < (part + 1) * PART; i++) {
                more += cost[i] * (values[i] - before[i]);
            }
            if (more > 0) {
                return false;
            }
        }
        return true;
    }

    private Optional<Split.Result> split(IntegerProgramme programme, long[] cost) {
        Box box = new Box(programme);
        Parts parts = new Parts(new Columns(programme, List.of()), programme.rows(), box);
        assertEquals(PARTS + 1, parts.all().size());
        Search whole = new Search(new ScipSolver(), programme, List.of(), Progress.NONE);
        return new Split(whole, new ScipSolver(), programme, programme.rows(), parts, cost, box, NODES, Progress.NONE)
                .minimise(box, Optional.empty());
    }

    /** Two machines a class with three populations; the second and third want modules, of which packs are bought. */
    private IntegerProgramme programme() {
        IntegerProgramme programme = new IntegerProgramme();
        Linear value = new Linear();
        List<Integer> packs = new ArrayList<>();
        for (int part = 0; part < PARTS; part++) {
            int first = programme.variables(3, 0, 2, 0, place -> "population " + place);
            int bought = programme.variable("packs", 0, 3);
            packs.add(bought);
            programme.equal("machines", new Linear().add(first, 1).add(first + 1, 1).add(first + 2, 1), 2);
            programme.atMost("modules", new Linear().add(first + 1, 1).add(first + 2, 2).add(bought, -2),
                    random.nextInt(2));
            value.add(bought, 5);
        }
        int used = programme.choice("used", 3);
        int free = programme.choice("free delivery", 3);
        packs.forEach(each -> programme.joinAtMost("used", new Linear().add(each, 1).add(used, -3), 0));
        programme.joinAtLeast("smallest order",
                new Linear().add(value, 1).add(used, -5L * (1 + random.nextInt(4) / 3)), 0);
        programme.atMost("free delivery", new Linear().add(free, 1).add(used, -1), 0);
        long freeFrom = random.nextBoolean() ? 10 : 100;
        programme.joinAtLeast("free delivery", new Linear().add(value, 1).add(free, -freeFrom), 0);
        return programme;
    }

    /** Staying as it is costs most, so that mostly something is bought; both last ones are the delivery. */
    private long[] cost() {
        long[] cost = new long[USED + 2];
        for (int part = 0; part < PARTS; part++) {
            cost[part * PART] = 6 + random.nextInt(20);
            cost[part * PART + 1] = random.nextInt(6);
            cost[part * PART + 2] = random.nextInt(4);
            cost[part * PART + 3] = 3 + random.nextInt(8);
        }
        cost[USED] = random.nextInt(40);
        cost[USED + 1] = -cost[USED];
        return cost;
    }

    private static OptionalLong least(long[] cost, Predicate<long[]> isKept) {
        long[] least = {Long.MAX_VALUE};
        each(new long[USED + 2], 0, values -> {
            if (isKept.test(values)) {
                least[0] = Math.min(least[0], Search.value(cost, values));
            }
        });
        return least[0] == Long.MAX_VALUE ? OptionalLong.empty() : OptionalLong.of(least[0]);
    }

    private static void each(long[] values, int place, Consumer<long[]> visitor) {
        if (place == values.length) {
            visitor.accept(values);
            return;
        }
        boolean isThird = place < USED && place % PART == 2;
        if (isThird) {
            values[place] = 2 - values[place - 1] - values[place - 2];
            if (values[place] >= 0) {
                each(values, place + 1, visitor);
            }
            return;
        }
        int most = place >= USED ? 1 : place % PART == 3 ? 3 : 2;
        for (long each = 0; each <= most; each++) {
            values[place] = each;
            each(values, place + 1, visitor);
        }
    }
}
