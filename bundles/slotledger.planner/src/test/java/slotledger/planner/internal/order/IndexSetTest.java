package slotledger.planner.internal.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;

class IndexSetTest {

    private static final int SIZE = 20_000;
    private static final int QUESTIONS = 3;
    private static final int ROUNDS = 200_000;

    @Test
    void itAnswersAsASortedSetDoesWhateverIsAskedBetweenChanges() {
        Random random = new Random(5);
        for (int near : new int[] {40, 700, SIZE}) {
            IndexSet set = new IndexSet(SIZE, QUESTIONS);
            TreeSet<Integer> sorted = new TreeSet<>();
            int[] walk = new int[QUESTIONS];
            for (int round = 0; round < ROUNDS; round++) {
                int number = random.nextInt(near);
                if (random.nextInt(3) > 0) {
                    int question = random.nextInt(QUESTIONS);
                    walk[question] = random.nextInt(4) == 0 ? number : Math.min(near - 1, walk[question] + 1);
                    Integer next = sorted.ceiling(walk[question]);
                    assertEquals(next == null ? -1 : next, set.next(walk[question], question));
                } else if (random.nextBoolean()) {
                    set.add(number);
                    sorted.add(number);
                } else {
                    set.remove(number);
                    sorted.remove(number);
                }
                assertEquals(sorted.isEmpty(), set.isEmpty());
                assertEquals(sorted.contains(number), set.contains(number));
            }
        }
    }
}
