package slotledger.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;

class LinearTest {

    @Test
    void termsOfOneVariableAreAddedUpAndGoWhereTheyCancelOut() {
        Linear sum = new Linear().add(7, 2).add(3, 5).add(7, -2).add(3, 1).add(9, 0);
        assertEquals(1, sum.size());
        assertEquals(3, sum.variable(0));
        assertEquals(6, sum.factor(0));
        assertTrue(new Linear().add(1, 4).add(1, -4).isEmpty());
    }

    @Test
    void aSumIsWhatItsTermsSay() {
        Random random = new Random(5);
        for (int round = 0; round < 500; round++) {
            Linear sum = new Linear();
            TreeMap<Integer, Long> expected = new TreeMap<>();
            for (int i = random.nextInt(30); i > 0; i--) {
                int variable = random.nextInt(8);
                long factor = random.nextInt(7) - 3;
                sum.add(variable, factor);
                expected.merge(variable, factor, Long::sum);
                if (random.nextInt(4) == 0) {
                    sum.add(new Linear().add(sum, 1), 2);
                    expected.replaceAll((unused, value) -> value * 3);
                }
            }
            expected.values().removeIf(factor -> factor == 0);
            TreeMap<Integer, Long> seen = new TreeMap<>();
            sum.forEach((variable, factor) -> seen.put(variable, factor));
            assertEquals(expected, seen);
            long[] values = random.longs(8, -9, 9).toArray();
            long value = expected.entrySet().stream().mapToLong(term -> term.getValue() * values[term.getKey()]).sum();
            assertEquals(value, sum.of(values));
        }
    }

    @Test
    void aSumCanBeAddedToItself() {
        Linear sum = new Linear().add(0, 1).add(1, 2);
        sum.add(sum, 3);
        assertEquals(4 + 80, sum.of(new long[] {4 / 4, 10}));
    }

    @Test
    void aSumThatDoesNotFitFailsInsteadOfGoingRound() {
        Linear sum = new Linear().add(0, Long.MAX_VALUE / 2);
        assertThrows(ArithmeticException.class, () -> sum.of(new long[] {3}));
    }
}
