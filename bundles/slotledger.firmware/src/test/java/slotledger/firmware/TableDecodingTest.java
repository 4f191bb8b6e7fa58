package slotledger.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.firmware.fact.ByteCount;
import slotledger.firmware.fact.Problem;
import slotledger.firmware.smbios.DeviceFacts;
import slotledger.firmware.smbios.FormFactor;
import slotledger.firmware.smbios.MemoryType;
import slotledger.firmware.smbios.SmbiosTable;
import slotledger.firmware.smbios.Structure;
import slotledger.firmware.smbios.StructureKind;

/** Source of every code: DMTF DSP0134, sections 7.17 and 7.18. */
class TableDecodingTest {

    @Test
    void aTableGivesSlotsWithRawAndDecodedValues() {
        SmbiosTable table = table(sound());
        Structure first = table.memoryDevices().get(0);
        assertEquals(Optional.of("0x2000"), first.facts().raw(DeviceFacts.SIZE));
        assertEquals(Optional.of(ByteCount.ofMib(8192)), first.get(DeviceFacts.SIZE));
        assertEquals(Optional.of(FormFactor.DIMM), first.get(DeviceFacts.FORM));
        assertEquals(Optional.of(MemoryType.DDR4), first.get(DeviceFacts.TYPE));
        assertEquals(Optional.of(2400), first.get(DeviceFacts.RATE));
        assertEquals(Optional.of(ByteCount.NOTHING), table.memoryDevices().get(1).get(DeviceFacts.SIZE));
        assertEquals(List.of(), table.problems());
    }

    @Test
    void whatTheFirmwareDoesNotKnowIsToldAsUnknown() {
        Structure device = table(new TableText().structure(TableText.ARRAY)
                .device(0, "FF FF", "02", "02", "00 00", "A").device(1, "00 00", "09", "1A", "00 00", "B")
                .structure(TableText.END).bytes()).memoryDevices().get(0);
        for (var fact : List.of(DeviceFacts.SIZE, DeviceFacts.FORM, DeviceFacts.TYPE, DeviceFacts.RATE)) {
            assertTrue(device.facts().tells(fact) && device.get(fact).isEmpty(), fact.name());
        }
        assertTrue(!device.facts().tells(DeviceFacts.CONFIGURED_RATE), "the structure is too short for it");
    }

    @Test
    void sizesInKilobytesAndTooLargeForTheirFieldAreRead() {
        SmbiosTable table = table(new TableText().structure(TableText.ARRAY)
                .device(0, "00 82", "09", "1A", "60 09", "A")
                .structure("11 28 01 11 00 10 FE FF 40 00 40 00 FF 7F 09 00 01 00 1A 80 00 60 09 00 00 00 00 00 "
                        + "00 00 01 00 60 09 00 00 00 00 00 00", "B")
                .structure(TableText.END).bytes());
        assertEquals(Optional.of(ByteCount.ofKib(512)), table.memoryDevices().get(0).get(DeviceFacts.SIZE));
        assertEquals(Optional.of(ByteCount.ofMib(65536)), table.memoryDevices().get(1).get(DeviceFacts.SIZE));
    }

    @Test
    void aStringThatIsNotThereIsAProblemWithItsOffset() {
        SmbiosTable table = table(new TableText().structure(TableText.ARRAY)
                .structure("11 1B 00 11 00 10 FE FF 40 00 40 00 00 20 09 00 05 00 1A 80 00 60 09 00 00 00 00", "A")
                .device(1, "00 00", "09", "1A", "00 00", "B").structure(TableText.END).bytes());
        Problem problem = table.problems().get(0);
        assertEquals(17 + 0x10, problem.offset());
        assertEquals("Memory Device 0x1100", problem.where());
        assertTrue(problem.seen().contains("string 5"), problem.seen());
    }

    @Test
    void aCutTableGivesWhatComesBeforeTheCut() {
        byte[] whole = sound();
        for (int cut = 60; cut < whole.length - 6; cut++) {
            SmbiosTable table = table(Arrays.copyOf(whole, cut));
            assertTrue(!table.problems().isEmpty() && table.first(StructureKind.ARRAY).isPresent(), "cut at " + cut);
        }
    }

    @Test
    void aStructureShorterThanItsHeadEndsTheTableAndIsNamed() {
        byte[] bytes = sound();
        bytes[17 + 1] = 3;
        SmbiosTable table = table(bytes);
        assertEquals(1, table.structures().size());
        assertTrue(table.problems().stream().anyMatch(p -> p.offset() == 17 && p.seen().contains("length is 3")),
                table.problems().toString());
    }

    @Test
    void contradictionsAreToldAndNothingIsCorrected() {
        SmbiosTable table = table(new TableText().structure(TableText.ARRAY)
                .device(0, "00 40", "0C", "1A", "60 09", "A").device(1, "00 40", "09", "1A", "60 09", "A")
                .device(2, "00 40", "09", "1A", "60 09", "C").structure(TableText.END).bytes());
        String problems = table.problems().toString();
        for (String part : List.of("form RIMM with DDR4", "counts 2 devices, the table has 3",
                "48 GB is installed, the array is said to take 32 GB", "same name as 0x1100")) {
            assertTrue(problems.contains(part), part + " in " + problems);
        }
        assertEquals(Optional.of(FormFactor.RIMM), table.memoryDevices().get(0).get(DeviceFacts.FORM));
    }

    private static byte[] sound() {
        return new TableText().structure(TableText.ARRAY).device(0, "00 20", "09", "1A", "60 09", "A")
                .device(1, "00 00", "09", "1A", "00 00", "B").structure(TableText.END).bytes();
    }

    private static SmbiosTable table(byte[] bytes) {
        FirmwareReading reading = new FirmwareReader().read("table", bytes).get(0);
        assertTrue(reading instanceof FirmwareReading.OfTable, reading.toString());
        return ((FirmwareReading.OfTable) reading).table();
    }
}
