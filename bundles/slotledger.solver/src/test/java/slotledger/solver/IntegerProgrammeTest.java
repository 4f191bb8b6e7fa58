package slotledger.solver;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class IntegerProgrammeTest {

    @Test
    void variablesOfABlockAreNamedByTheirPlace() {
        IntegerProgramme programme = new IntegerProgramme();
        programme.variable("first", 0, 3);
        int block = programme.variables(100, 0, 9, 2, place -> "block " + place);
        int last = programme.choice("last", 1);
        assertEquals(1, block);
        assertEquals("first", programme.name(0));
        assertEquals("block 0", programme.name(1));
        assertEquals("block 99", programme.name(100));
        assertEquals("last", programme.name(last));
        assertEquals(new IntegerProgramme.Variable("block 41", 0, 9, 2), programme.variables().get(42));
    }

    @Test
    void theFirstBrokenLimitIsNamed() {
        IntegerProgramme programme = new IntegerProgramme();
        int packs = programme.variable("packs", 0, 3);
        int machines = programme.variable("machines", 1, 2);
        programme.atMost("room", new Linear().add(packs, 2).add(machines, 1), 6);
        programme.atLeast("need", new Linear().add(packs, 1), 2);
        assertEquals(Optional.empty(), programme.broken(new long[] {2, 2}));
        assertEquals(Optional.of("machines"), programme.broken(new long[] {2, 0}));
        assertEquals(Optional.of("room"), programme.broken(new long[] {3, 1}));
        assertEquals(Optional.of("need"), programme.broken(new long[] {1, 1}));
    }

    @Test
    void limitsThatCrossAreRefused() {
        IntegerProgramme programme = new IntegerProgramme();
        assertThrows(IllegalArgumentException.class, () -> programme.variable("packs", 2, 1));
    }
}
