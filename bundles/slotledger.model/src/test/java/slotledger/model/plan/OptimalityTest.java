package slotledger.model.plan;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.Currency;
import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.unit.Money;

class OptimalityTest {

    @Test
    void isProvenOnlyWhereBothBoundsAreReached() {
        assertTrue(optimality(10, 10, 500, 500).isProven());
        assertFalse(optimality(9, 10, 500, 500).isProven());
        assertFalse(optimality(10, 10, 500, 499).isProven());
    }

    @Test
    void theGapIsRoundedUpSoThatItIsNeverUnderstated() {
        assertEquals(new BigDecimal("0.000001"), optimality(1, 1, 100_000_000, 99_999_999).costGap());
        assertEquals(BigDecimal.ZERO, optimality(0, 0, 0, 0).costGap());
    }

    @Test
    void aBoundWorseThanThePlanIsABug() {
        assertThrows(IllegalArgumentException.class, () -> optimality(1, 1, 10, 11));
    }

    private static Optimality optimality(long on, long bound, long cost, long costBound) {
        Currency euro = Currency.getInstance("EUR");
        return new Optimality(on, bound, new Money(cost, euro), new Money(costBound, euro), "test", List.of(), false);
    }
}
