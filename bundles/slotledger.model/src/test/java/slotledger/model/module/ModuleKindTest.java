package slotledger.model.module;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

class ModuleKindTest {

    @Test
    void isDescribedWithoutWhatIsUnknown() {
        assertEquals("8 GB", ModuleKind.ofCapacity(Capacity.ofGiB(8)).toString());
        assertEquals(
                "8 GB DDR3-1600 SO-DIMM, 2Rx8, 4 Gbit chips, non-ECC, unbuffered, CL11, 1.35 V/1.5 V",
                ModuleKind.of(Generation.DDR3, Form.SO_DIMM, Capacity.ofGiB(8))
                        .with(Rate.of(1600)).withRanks(2).with(ChipWidth.X8).with(ChipSize.ofGbit(4))
                        .with(ErrorCheck.NONE).with(Buffering.UNBUFFERED).withCasLatency(11)
                        .with(Voltage.ofMillivolts(1500), Voltage.ofMillivolts(1350))
                        .toString());
    }

    @Test
    void equalFactsMakeEqualKinds() {
        ModuleKind one = ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(8)).with(Rate.of(2666));
        assertEquals(one, ModuleKind.ofCapacity(Capacity.ofMiB(8192)).with(Rate.of(2666)).with(Form.DIMM)
                .with(Generation.DDR4));
    }

    @Test
    void mustHoldSomething() {
        assertThrows(IllegalArgumentException.class, () -> ModuleKind.ofCapacity(Capacity.NONE));
    }
}
