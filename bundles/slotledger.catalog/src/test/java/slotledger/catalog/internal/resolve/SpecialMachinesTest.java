package slotledger.catalog.internal.resolve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.catalog.Catalog;
import slotledger.catalog.CatalogException;
import slotledger.catalog.ResolvedFleet;
import slotledger.catalog.internal.DefaultCatalogReader;
import slotledger.catalog.internal.DefaultFleetResolver;
import slotledger.catalog.spi.BoardFile;
import slotledger.model.board.Redundancy;
import slotledger.model.finding.Finding;
import slotledger.model.module.ErrorCheck;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.observed.ObservedMachine;

/** Machines whose empty sockets hold something, and machines whose total says what is in their banks. */
class SpecialMachinesTest {

    private static Catalog catalog;

    private static BoardFile file(String model, String channels, String takes, String more) {
        return new BoardFile(model, """
                board: orvane-%s
                maker: Orvane
                model: %s
                form: desktop
                source: from memory
                channels: %s
                takes: %s
                %s
                """.formatted(model, model, channels, takes, more));
    }

    @BeforeAll
    static void readTheBoards(@TempDir Path empty) throws CatalogException {
        String rimm = "{generation: RDRAM, form: %s-pin RIMM}";
        String simm = "{generation: FPM, form: %s-pin SIMM, largest-module: %s}";
        List<BoardFile> files = new ArrayList<>(List.of(
                file("r184", "{A: [RIMM1, RIMM3], B: [RIMM2, RIMM4]}", rimm.formatted(184),
                        "fill: [RIMM1, RIMM2, RIMM3, RIMM4]"),
                file("r232", "{A: [RIMM1, RIMM2]}", rimm.formatted(232), ""),
                file("s1", "{A: [D1, D2], B: {processor: 2, slots: [D3]}}", "{generation: DDR4, form: DIMM}",
                        "processor-sockets: 2\nfill: {order: [D1, D2, D3], empty-sockets: airflow blank}"),
                file("d1", "{A: [D1, D2]}", "{generation: DDR4, form: DIMM}", "fill: [D1, D2]"),
                file("m30", "{A: [1, 2, 3, 4, 5, 6, 7, 8]}", simm.formatted(30, "4 MB"), "banks: 32"),
                file("m72", "{A: [J1, J2, J3, J4]}", simm.formatted(72, "32 MB"),
                        "banks: {bus: 64, list: {0: [J3, J4], 1: [J1, J2]}}"),
                file("p30", "{A: [1, 2, 3, 4]}", "{generation: FPM, form: 30-pin SIMM, parity: required}", "banks: 32"),
                file("m72x", "{A: [J1, J2]}", simm.formatted(72, "32 MB"), "")));
        for (int pins : new int[] {30, 72}) {
            for (int bus : new int[] {16, 32, 64}) {
                files.add(file("p%d-%d".formatted(pins, bus), "{A: [1, 2, 3, 4, 5, 6, 7, 8]}",
                        simm.formatted(pins, "16 MB"), "banks: " + bus));
            }
        }
        catalog = new DefaultCatalogReader(List.of(() -> files)).read(List.of(empty)).catalog();
        assertEquals(files.size(), catalog.boards().size());
    }

    private static ResolvedFleet resolve(String... lines) {
        List<ObservedMachine> machines = new ArrayList<>();
        for (String line : lines) {
            machines.add(Sighting.of("PC-" + machines.size(), line));
        }
        return new DefaultFleetResolver().resolve(new ObservedFleet(machines, List.of()), catalog);
    }

    private static List<String> codes(ResolvedFleet resolved) {
        return resolved.findings().stream().map(finding -> finding.severity().text() + " " + finding.code()).toList();
    }

    /** "RIMM1=128 MB RIMM3=184-pin continuity module": the slots that hold something. */
    private static String slots(ResolvedFleet resolved) {
        return resolved.fleet().machines().isEmpty() ? "unresolved"
                : resolved.fleet().machines().get(0).population().contents().entrySet().stream()
                        .filter(entry -> !entry.getValue().isEmpty())
                        .map(entry -> entry.getKey() + "=" + entry.getValue().module()
                                .map(kind -> kind.capacity().toString())
                                .orElse(entry.getValue().toString()))
                        .collect(Collectors.joining(" "));
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "Orvane|r184|RIMM1=128MB|RIMM2=128MB|RIMM3=184-pin continuity module|RIMM4=184-pin continuity module; ''",
        "Orvane|r184|RIMM1=128MB|RIMM2=128MB|RIMM3=airflow blank|RIMM4=232-pin continuity and termination module; ''",
        "Orvane|r184|RIMM1=128MB|RIMM2=128MB|RIMM3=empty|RIMM4=empty; note fillers-assumed",
        "Orvane|r184|RIMM1=128MB|RIMM2=128MB; note fillers-assumed",
        "Orvane|r184|RIMM1=128MB|RIMM2=128MB|RIMM3=184-pin continuity module; note fillers-assumed",
        "Orvane|r184|128MB|184-pin continuity module|128MB|184-pin continuity module; note slots-assumed",
    })
    void anEmptyRimmSocketHoldsTheContinuityModuleOfItsForm(String line, String codes) {
        ResolvedFleet resolved = resolve(line);

        assertEquals("RIMM1=128 MB RIMM3=184-pin continuity module RIMM2=128 MB RIMM4=184-pin continuity module",
                slots(resolved));
        assertEquals(codes, String.join(", ", codes(resolved)));
    }

    @Test
    void whatIsAssumedOfEmptySocketsIsSaidOnceForEachBoard() {
        ResolvedFleet resolved = resolve("Orvane|r184|RIMM1=128MB|RIMM2=128MB", "Orvane|r184|RIMM1=128MB|RIMM2=128MB",
                "Orvane|r232|RIMM1=256MB", "Orvane|s1|processors=2|D1=8", "Orvane|d1|D1=8");

        assertEquals(List.of(
                "Empty sockets of the board Orvane r184 were taken to hold one 184-pin continuity module each, since"
                        + " the machines wouldn't run without: 4 in 2 machine(s).",
                "Empty sockets of the board Orvane r232 were taken to hold one 232-pin continuity and termination"
                        + " module each, since the machines wouldn't run without: 1 in 1 machine(s).",
                "Empty sockets of the board Orvane s1 were taken to hold one airflow blank each, since the board's"
                        + " document asks for it (from memory): 2 in 1 machine(s)."),
                resolved.findings().stream().map(Finding::message).toList());
        assertTrue(resolved.findings().stream().allMatch(finding -> finding.machine().isEmpty()));
    }

    @Test
    void nothingIsAssumedOfAMachineThatIsNotResolvedOrHoldsNoMemory() {
        assertEquals(List.of("error more-modules-than-slots"), codes(resolve("Orvane|r232|128MB|128MB|128MB")));
        assertEquals(List.of("warning no-memory"), codes(resolve("Orvane|r232|RIMM1=empty")));
        assertEquals("", slots(resolve("Orvane|r232|RIMM1=empty")));
    }

    @Test
    void aFillerInTheSlotOfAMissingProcessorNeedsNoProcessor() {
        ResolvedFleet resolved = resolve("Orvane|s1|D1=8|D2=8|D3=airflow blank");

        assertEquals(1, resolved.fleet().machines().get(0).processors());
        assertEquals("D1=8 GB D2=8 GB D3=airflow blank", slots(resolved));
        assertEquals(List.of("warning processors-assumed"), codes(resolved));
    }

    @Test
    void aFillerKeepsModulesOutOfItsSocket() {
        assertEquals("D1=airflow blank D2=8 GB", slots(resolve("Orvane|d1|D1=airflow blank|8")));
        assertEquals(List.of("error more-modules-than-slots"), codes(resolve("Orvane|d1|D1=airflow blank|8|8")));
    }

    @Test
    void moreFillersThanSocketsAreAWarning() {
        assertEquals(List.of("warning more-fillers-than-slots"),
                codes(resolve("Orvane|d1|8|8|airflow blank")));
    }

    @Test
    void fillersBesideATotalDontHideTheTotal() {
        assertEquals(List.of("error slots-unknown"),
                codes(resolve("Orvane|r184|total=1|RIMM3=184-pin continuity module")));
    }

    @Test
    void aSimmInABoardThatChecksParityHasParity() {
        ResolvedFleet resolved = resolve("Orvane|p30|1=1MB|2=1MB|3=1MB|4=1MB");

        assertEquals(Optional.of(ErrorCheck.PARITY),
                resolved.fleet().machines().get(0).population().modules().get(0).errorCheck());
    }

    @ParameterizedTest
    @CsvSource(delimiter = ';', value = {
        "m30|total=0.015625; 1=4 MB 2=4 MB 3=4 MB 4=4 MB",
        "m30|total=0.0078125; 1=1 MB 2=1 MB 3=1 MB 4=1 MB 5=1 MB 6=1 MB 7=1 MB 8=1 MB",
        "m30|total=0.0009765625; 1=256 KB 2=256 KB 3=256 KB 4=256 KB",
        "m72|total=0.015625; J3=8 MB J4=8 MB",
        "m72|total=0.0625; J3=32 MB J4=32 MB",
        "m72|total=0.125; J1=32 MB J2=32 MB J3=32 MB J4=32 MB",
    })
    void aTotalOfSimmsIsTheFewestEqualModulesInWholeBanks(String machine, String expected) {
        ResolvedFleet resolved = resolve("Orvane|" + machine);

        assertEquals(expected, slots(resolved));
        assertEquals(List.of("warning slots-assumed"), codes(resolved));
    }

    /**
     * The table of buses and SIMMs as an encyclopaedia's text on SIMM banks prints it, and CertiGuide A+ likewise: a
     * bus of 16 bits wants 2 SIMMs of 30 pins, one of 32 bits 4 or 1 of 72 pins, one of 64 bits 8 or 2.
     */
    @ParameterizedTest
    @CsvSource({"30, 16, 2", "30, 32, 4", "30, 64, 8", "72, 32, 1", "72, 64, 2"})
    void aBankHasTheBitsOfTheBusByThoseOfAModule(int pins, int bus, int modules) {
        ResolvedFleet resolved = resolve("Orvane|p%d-%d|total=%s".formatted(pins, bus, modules / 1024.0));

        assertEquals(modules, resolved.fleet().machines().get(0).population().modules().size());
        assertTrue(slots(resolved).startsWith("1=1 MB"), slots(resolved));
    }

    @Test
    void whatWasAssumedOfATotalIsSaid() {
        assertEquals("Only the total is known; it was taken for 2 x 8 MB in J3, J4: the fewest equal modules that fill"
                + " whole banks in order.", resolve("Orvane|m72|total=0.015625").findings().get(0).message());
    }

    @ParameterizedTest
    @CsvSource({"m72|total=0.0234375", "m72|total=0.25", "m72x|total=0.015625", "m30|total=0.0625", "r184|total=0.25"})
    void aTotalThatEqualModulesInKnownBanksDontGiveIsNeverSplit(String machine) {
        assertEquals(List.of("error slots-unknown"), codes(resolve("Orvane|" + machine)));
    }

    @ParameterizedTest
    @CsvSource({
        "Mirrored, MIRRORED", "memory mirroring, MIRRORED", "Mirrored Channel Mode, MIRRORED", "mirror, MIRRORED",
        "Rank Sparing, SPARED", "spare, SPARED", "Memory Rank Sparing Mode, SPARED", "online spare, SPARED",
        "independent, NONE", "Independent Channel, NONE", "off, NONE", "'', NONE",
    })
    void aMemoryModeIsKnownByTheWordsOfFirmwareSetups(String written, Redundancy expected) {
        ResolvedFleet resolved = resolve("Orvane|d1|D1=8|D2=8|mode=" + written);

        assertEquals(expected, resolved.fleet().machines().get(0).redundancy());
        assertEquals(List.of(), codes(resolved));
    }

    @Test
    void anUnknownMemoryModeIsAWarning() {
        ResolvedFleet resolved = resolve("Orvane|d1|D1=8|D2=8|mode=Lockstep");

        assertEquals(Redundancy.NONE, resolved.fleet().machines().get(0).redundancy());
        assertEquals(List.of("warning memory-mode-unknown"), codes(resolved));
        assertEquals("Lockstep", resolved.findings().get(0).seen());
    }
}
