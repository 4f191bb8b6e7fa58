package slotledger.catalog.internal.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.catalog.Catalog;
import slotledger.catalog.CatalogException;
import slotledger.catalog.internal.DefaultCatalogReader;
import slotledger.catalog.internal.DemoBoards;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Machine;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;

class MachineResolverTest {

    private static Catalog catalog;

    @BeforeAll
    static void readTheDemoBoards() throws CatalogException {
        catalog = new DefaultCatalogReader(List.of()).read(List.of(DemoBoards.folder())).catalog();
    }

    private static MachineResolver.Resolution resolve(String line) {
        return new MachineResolver(catalog, new Blanks()).resolve(Sighting.of(line));
    }

    private static List<String> codes(MachineResolver.Resolution resolution) {
        return resolution.findings().stream().map(finding -> finding.severity().text() + " " + finding.code()).toList();
    }

    /** "DIMM4=4 DIMM2=4": the slots that hold something, in the board's order, capacities in GB. */
    private static String slots(MachineResolver.Resolution resolution) {
        return resolution.machine().map(machine -> machine.population().contents().entrySet().stream()
                .filter(entry -> !entry.getValue().isEmpty())
                .map(entry -> entry.getKey() + "=" + shown(entry))
                .collect(Collectors.joining(" "))).orElse("unresolved");
    }

    private static String shown(Map.Entry<String, SlotContent> entry) {
        return entry.getValue().module().map(kind -> String.valueOf(kind.capacity().mebibytes() / 1024)).orElse("?");
    }

    private static Machine machine(String line) {
        return resolve(line).machine().orElseThrow();
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "Kestrin|KB-410|DIMM4=4|DIMM2=4|DIMM1=empty|DIMM3=empty; DIMM4=4 DIMM2=4",
        "Kestrin|KB-410|dimm 4=4|Dimm_2=8; DIMM4=4 DIMM2=8",
        "Kestrin|KB-410|Slot 4=4|Slot 2=8; DIMM4=4 DIMM2=8",
        "Kestrin|KB-410|Slot 01=4|Slot 02=8; DIMM2=8 DIMM1=4",
        "Kestrin|KB-510|A2=8|B2=8; A2=8 B2=8",
        "Kestrin|KB-510|DIMM A2=8|DIMM B2=8; A2=8 B2=8",
        "Kestrin|KB-510|ChannelA-DIMM2=8|ChannelB-DIMM2=8; A2=8 B2=8",
        "Tallowick|T310|Slot 3=1|Slot 4=1; XMM3=1 XMM4=1",
        "Kestrin|KB-515|Slot 1=8|Slot 2=empty|Slot 3=empty|Slot 4=empty; DIMM1=8",
        "Orvane|N450|Bank 2=8|Bank 1=empty; JDIMM2=8",
        "Dunmarsk|S110|3=8|4=8; 3=8 4=8",
    })
    void namesOfSlotsAreMappedToPrintedLabelsWithoutAFinding(String line, String expected) {
        MachineResolver.Resolution resolution = resolve(line);

        assertEquals(expected, slots(resolution));
        assertEquals(List.of(), codes(resolution));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "Kestrin|KB-410|BANK 0=4|BANK 1=empty|BANK 2=8|BANK 3=empty; DIMM3=8 DIMM1=4",
        "Kestrin|KB-510|ChannelA-DIMM0=8|ChannelA-DIMM1=empty|ChannelB-DIMM0=4|ChannelB-DIMM1=empty; A1=8 B1=4",
    })
    void namesThatCountFromZeroAreTakenForTheNextLabelAndSaidSo(String line, String expected) {
        MachineResolver.Resolution resolution = resolve(line);

        assertEquals(expected, slots(resolution));
        assertEquals(List.of("note slots-assumed"), codes(resolution));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "Kestrin|KB-410|4|4; DIMM4=4 DIMM2=4; note",
        "Kestrin|KB-410|4; DIMM4=4; note",
        "Kestrin|KB-510|8|8; A2=8 B2=8; note",
        "Kestrin|KB-510|Slot 1=8|Slot 2=8; A2=8 B2=8; note",
        "Kestrin|KB-410|4|8; DIMM4=4 DIMM2=8; warning",
        "Tallowick|T320|left=1|right=2; J5=1 J6=2; warning",
        "Marrowby|W3|2|4|4; DIMM 1=4 DIMM 3=4 DIMM 5=2; warning",
        "Dunmarsk|S330|processors=1|16|16|16|16; A5=16 A4=16 A2=16 A1=16; note",
        "Dunmarsk|S440|32|32|32|32; 3=32 7=32 10=32 14=32; note",
        "Kestrin|KB-410|DIMM4=4|4; DIMM4=4 DIMM2=4; note",
        "Kestrin|KB-410|DIMM 0=4|DIMM 0=4; DIMM4=4 DIMM2=4; note",
    })
    void modulesWithoutKnownSlotsAreCountedInFillOrderAndSaidSo(String line, String expected, String severity) {
        MachineResolver.Resolution resolution = resolve(line);

        assertEquals(expected, slots(resolution));
        assertEquals(List.of(severity + " slots-assumed"), codes(resolution));
    }

    @Test
    void nothingIsAssumedWhereEqualModulesFillEverySocket() {
        MachineResolver.Resolution resolution = resolve("Kestrin|KB-410|4|4|4|4");

        assertEquals("DIMM4=4 DIMM3=4 DIMM2=4 DIMM1=4", slots(resolution));
        assertEquals(List.of(), codes(resolution));
    }

    @Test
    void anUnknownBoardSaysWhatToLookUpAndWhere() {
        MachineResolver.Resolution resolution = resolve("Kestrin|KB 4l0|4");
        Finding finding = resolution.findings().get(0);

        assertEquals("unresolved", slots(resolution));
        assertEquals(List.of("error board-unknown"), codes(resolution));
        assertTrue(finding.message().contains("Kestrin KB-410 (kestrin-kb410)"), finding.message());
        for (String where : List.of("underneath a notebook", "side panel", "inside the door", "firmware setup",
                "dmidecode", "System Information")) {
            assertTrue(finding.remedy().contains(where), where);
        }
        assertEquals("PC-1", finding.machine().orElseThrow().value());
        assertEquals(List.of("error board-unknown"), codes(resolve("|  |4")));
    }

    @Test
    void moreModulesThanSocketsCantBePlaced() {
        assertEquals(List.of("error more-modules-than-slots"), codes(resolve("Kestrin|KB-515|8|8|8")));
    }

    @Test
    void aTotalAloneIsNeverSplit() {
        assertEquals(List.of("error slots-unknown"), codes(resolve("Kestrin|KB-410|total=16")));
        assertEquals(List.of("error slots-unknown"), codes(resolve("Kestrin|KB-515|total=16|slots=2")));
    }

    @Test
    void aTotalSaysAllWhereThereIsOneSocket() {
        assertEquals("Onboard=4 SODIMM 1=8", slots(resolve("Orvane|N250|total=12")));
        assertEquals("Onboard=4", slots(resolve("Orvane|N250|total=4")));
        assertEquals(List.of(), codes(resolve("Orvane|N250|total=12")));
        assertEquals(List.of("error slots-unknown"), codes(resolve("Orvane|N250|total=11.8")));
        assertEquals(List.of("error soldered-contradicts-board"), codes(resolve("Orvane|N250|total=2")));
    }

    @Test
    void memoryThatIsAllSolderedIsKnownFromTheBoard() {
        assertEquals("Onboard A=4 Onboard B=4", slots(resolve("Orvane|X13|")));
        assertEquals("Onboard A=4 Onboard B=4", slots(resolve("Orvane|X13|total=8")));
        assertEquals(List.of("error soldered-contradicts-board"), codes(resolve("Orvane|X13|total=16")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "Orvane|N250|Onboard=4|SODIMM 1=8; Onboard=4 SODIMM 1=8; ''",
        "Orvane|N250|4 soldered|SODIMM 1=8; Onboard=4 SODIMM 1=8; ''",
        "Orvane|N250|SODIMM 1=8; Onboard=4 SODIMM 1=8; ''",
        "Orvane|N250|SODIMM 1=4|total=8; Onboard=4 SODIMM 1=4; ''",
        "Orvane|N250|SODIMM 1=4|total=4; unresolved; error soldered-contradicts-board",
        "Orvane|N250|Slot 1=4|Slot 2=empty|total=4; Onboard=4; note slots-assumed",
        "Orvane|N250|Slot 1=4|Slot 2=8|total=12; Onboard=4 SODIMM 1=8; note slots-assumed",
        "Orvane|N250|Slot 1=8|total=12; Onboard=4 SODIMM 1=8; ''",
        "Orvane|N250|System Board Memory=4|Slot 1=8; Onboard=4 SODIMM 1=8; ''",
        "Orvane|N250|4|4|total=8; Onboard=4 SODIMM 1=4; note slots-assumed",
        "Orvane|N250|4|total=4; Onboard=4; note slots-assumed",
        "Orvane|N250|4|total=8; Onboard=4 SODIMM 1=4; ''",
        "Orvane|N250|8|total=8; unresolved; error soldered-contradicts-board",
        "Orvane|N250|4; unresolved; error soldered-contradicts-board",
        "Orvane|N250|8 soldered; unresolved; error soldered-contradicts-board",
        "Kestrin|KB-515|8 soldered; unresolved; error soldered-contradicts-board",
        "Orvane|N250|4|4|4; unresolved; error more-modules-than-slots",
    })
    void solderedMemoryIsCountedOnce(String line, String expected, String codes) {
        MachineResolver.Resolution resolution = resolve(line);

        assertEquals(expected, slots(resolution));
        assertEquals(codes, String.join(", ", codes(resolution).stream()
                .filter(code -> !expected.equals("unresolved") || code.startsWith("error")).toList()));
    }

    @Test
    void aModuleGetsTheFactsThatItsBoardDecides() {
        ModuleKind kind = machine("Kestrin|KB-410|DIMM4=4").population().in("DIMM4").module().orElseThrow();

        assertEquals(ModuleKind.of(Generation.DDR3, Form.DIMM, Capacity.ofGiB(4))
                .with(Buffering.UNBUFFERED).with(ErrorCheck.NONE), kind);
    }

    @Test
    void aFactTheBoardLeavesOpenStaysUnknown() {
        ModuleKind kind = machine("Kestrin|KB-420|DIMM_A=4").population().in("DIMM_A").module().orElseThrow();

        assertEquals(Optional.empty(), kind.errorCheck());
        assertTrue(kind.voltages().isEmpty());
    }

    @Test
    void theSlotDecidesWhereSlotsTakeDifferentModules() {
        Machine machine = machine("Dunmarsk|S110|4=8|2=8");

        assertEquals(Optional.empty(), machine.population().in("4").module().orElseThrow().buffering());
        assertEquals(Optional.of(Buffering.REGISTERED),
                machine.population().in("2").module().orElseThrow().buffering());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "Kestrin|KB-510|A2=8 DDR3",
        "Kestrin|KB-510|A2=8 SO",
        "Kestrin|KB-510|A2=8 registered",
        "Kestrin|KB-410|DIMM4=8 ECC",
    })
    void aModuleThatContradictsTheBoardLeavesTheMachineUnresolved(String line) {
        MachineResolver.Resolution resolution = resolve(line);

        assertEquals(List.of("error module-contradicts-board"), codes(resolution));
        assertTrue(resolution.findings().get(0).seen().startsWith("8 GB"));
        assertFalse(resolution.machine().isPresent());
    }

    @Test
    void aModuleInADeadConnectorIsReported() {
        assertEquals(List.of("error module-in-dead-slot"), codes(resolve("Dunmarsk|S110|1=8")));
        assertEquals("4=8", slots(resolve("Dunmarsk|S110|1=empty|4=8")));
    }

    @Test
    void anotherNumberOfSlotsIsAWarning() {
        assertEquals(List.of("warning slot-count-differs"), codes(resolve("Kestrin|KB-410|DIMM4=4|slots=2")));
        assertEquals(List.of(), codes(resolve("Orvane|N250|SODIMM 1=4|slots=1")));
        assertEquals(List.of(), codes(resolve("Orvane|N250|SODIMM 1=4|slots=2")));
        assertEquals(List.of(), codes(resolve("Dunmarsk|S110|4=4|slots=8")));
    }

    @Test
    void theNumberOfProcessorsFollowsFromTheSlotsOrIsAssumed() {
        assertEquals(2, machine("Dunmarsk|S220|P1-A1=16|P2-A1=16").processors());
        assertEquals(List.of(), codes(resolve("Dunmarsk|S220|P1-A1=16|P2-A1=16")));
        assertEquals(1, machine("Dunmarsk|S220|P1-A1=16").processors());
        assertEquals(List.of("warning processors-assumed"), codes(resolve("Dunmarsk|S220|P1-A1=16")));
        assertEquals(List.of("error processors-contradict-slots"),
                codes(resolve("Dunmarsk|S220|processors=1|P1-A1=16|P2-A1=16")));
        assertEquals(List.of("error processors-contradict-board"),
                codes(resolve("Kestrin|KB-410|processors=2|DIMM4=4")));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "Corvid 5 8400; Corvid 5 8400",
        "Raven Corvid 5-8400 CPU @ 2.80GHz; Corvid 5 8400",
        "corvid 3-8100; Corvid 3 8100",
    })
    void aProcessorIsFoundByTheBoardsNameInTheText(String written, String expected) {
        assertEquals(Optional.of(expected), machine("Kestrin|KB-510|A2=8|processor=" + written).processor());
    }

    @Test
    void anUnknownProcessorIsNotedAndLeftOut() {
        MachineResolver.Resolution resolution = resolve("Kestrin|KB-510|A2=8|processor=Corvid 7 8700");

        assertEquals(Optional.empty(), resolution.machine().orElseThrow().processor());
        assertEquals(List.of("note processor-unknown"), codes(resolution));
    }

    @Test
    void whatCouldNotBeReadStaysInItsSlot() {
        Machine machine = machine("Kestrin|KB-410|DIMM4=4|DIMM2=see Bob");

        assertTrue(machine.population().hasUnread());
        assertEquals(new SlotContent.Unread("see Bob"), machine.population().in("DIMM2"));
    }

    @Test
    void aMachineWithoutAWordOnItsMemoryIsUnresolved() {
        assertEquals(List.of("error memory-unknown"), codes(resolve("Kestrin|KB-410|slots=4")));
    }

    @Test
    void slotsSaidToBeEmptyBesideATotalAreAContradiction() {
        assertEquals(List.of("error slots-unknown"), codes(resolve("Kestrin|KB-410|DIMM4=empty|total=8")));
        assertEquals(List.of("warning no-memory"), codes(resolve("Kestrin|KB-410|DIMM4=empty")));
    }
}
