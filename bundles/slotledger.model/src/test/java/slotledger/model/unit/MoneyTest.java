package slotledger.model.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.math.BigDecimal;
import java.util.Currency;
import org.junit.jupiter.api.Test;

class MoneyTest {

    private static final Currency EUR = Currency.getInstance("EUR");

    @Test
    void keepsCents() {
        assertEquals(new Money(1250, EUR), Money.of(new BigDecimal("12.5"), EUR));
        assertEquals("EUR 12.50", new Money(1250, EUR).toString());
        assertEquals("JPY 1250", new Money(1250, Currency.getInstance("JPY")).toString());
    }

    @Test
    void refusesPartsOfACent() {
        assertThrows(ArithmeticException.class, () -> Money.of(new BigDecimal("0.005"), EUR));
    }

    @Test
    void neverAddsDifferentCurrencies() {
        assertThrows(IllegalArgumentException.class,
                () -> Money.zero(EUR).plus(Money.zero(Currency.getInstance("GBP"))));
    }
}
