package slotledger.model.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CapacityTest {

    @ParameterizedTest
    @CsvSource({
        "256, 256 KB", "1024, 1 MB", "1536, 1.5 MB", "524288, 512 MB", "1048576, 1 GB", "1572864, 1.5 GB",
        "8388608, 8 GB", "1049600, 1025 MB", "1048577, 1048577 KB", "0, 0 MB", "134217728, 128 GB",
        "1073741824, 1 TB", "25769803776, 24 TB", "1610612736, 1536 GB"
    })
    void isWrittenAsTheTradeWritesIt(long kibibytes, String text) {
        assertEquals(text, Capacity.ofKiB(kibibytes).toString());
    }

    @Test
    void mayNotBeNegative() {
        assertThrows(IllegalArgumentException.class, () -> Capacity.ofGiB(4).minus(Capacity.ofGiB(8)));
    }

    @Test
    void doesNotOverflowSilently() {
        assertThrows(ArithmeticException.class, () -> Capacity.ofGiB(Long.MAX_VALUE / 1000));
        assertThrows(ArithmeticException.class, () -> Capacity.ofGiB(1L << 40).times(1L << 40));
    }
}
