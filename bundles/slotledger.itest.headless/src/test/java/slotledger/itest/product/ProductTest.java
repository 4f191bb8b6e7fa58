package slotledger.itest.product;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

class ProductTest {
    @Test
    void x() { assertEquals(1, 1); }
}
