package slotledger.model.machine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.Map;
import org.junit.jupiter.api.Test;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;

class PopulationTest {

    private static final SlotContent EIGHT = SlotContent.of(ModuleKind.ofCapacity(Capacity.ofGiB(8)));

    @Test
    void equalsAnotherWithTheSlotsInAnyOrder() {
        Map<String, SlotContent> other = new LinkedHashMap<>();
        other.put("B", SlotContent.EMPTY);
        other.put("A", EIGHT);
        assertEquals(new Population(Map.of("A", EIGHT, "B", SlotContent.EMPTY)), new Population(other));
    }

    @Test
    void countsWhatCouldBeReadAndSaysWhereSomethingCouldNot() {
        Population population = new Population(Map.of("A", EIGHT, "B", new SlotContent.Unread("8 GiBs?")));
        assertEquals(Capacity.ofGiB(8), population.total());
        assertTrue(population.hasUnread());
    }

    @Test
    void aChangeLeavesTheOriginalAlone() {
        Population before = new Population(Map.of("A", EIGHT));
        assertEquals(Capacity.NONE, before.with("A", SlotContent.EMPTY).total());
        assertEquals(Capacity.ofGiB(8), before.total());
    }
}
