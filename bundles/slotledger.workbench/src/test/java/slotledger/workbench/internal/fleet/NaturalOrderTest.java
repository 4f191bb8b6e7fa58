package slotledger.workbench.internal.fleet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

class NaturalOrderTest {

    @Test
    void numbersCountByTheirValueAndCaseDoesNotCount() {
        List<String> wanted = List.of(
                "", "Lab", "lab 2", "LAB 10", "lab 10b", "PC-009", "PC-10", "pc-99999999999999999999");
        List<String> mixed = new ArrayList<>(wanted);
        Collections.reverse(mixed);
        mixed.sort(NaturalOrder.INSTANCE);
        assertEquals(wanted, mixed);
    }

    @Test
    void differentTextsAreNeverEqual() {
        assertTrue(NaturalOrder.INSTANCE.compare("PC-01", "PC-1") != 0);
        assertEquals(0, NaturalOrder.INSTANCE.compare("PC-1", "PC-1"));
    }
}
