package slotledger.rules.internal.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.testkit.OutsideData;

/** Outside check: Microsoft, Memory Limits for Windows and Windows Server Releases. */
class SystemUsesTest {

    private static final Board BOARD = BoardText.board("none", """
            channel A 1 A1
            takes DDR4 DIMM
            """);

    private static Setup setup(String system, String module) {
        return new Setup(BOARD, 1, Optional.empty(), Optional.of(system), Redundancy.NONE,
                ModuleText.population(BOARD, "A1: " + module + " DDR4 DIMM"));
    }

    private static Weight weight(String system, String module) {
        return Judged.verdict(new SystemUses(), setup(system, module)).weight();
    }

    @Test
    void anEditionUsesNoMoreThanItsLimit() {
        assertEquals(Weight.LOWERS, weight("Windows 7 Professional 32-bit", "8GB"));
        assertEquals(Weight.PASSES, weight("Microsoft Windows 10 Pro x64", "64GB"));
        assertEquals(Weight.LOWERS, weight("Win10 Home (64 bit)", "256GB"));
        assertEquals(Weight.LOWERS, weight("Windows 7 Home Basic 64-bit", "16GB"));
        assertEquals(Weight.LOWERS, weight("Windows Server 2008 R2 Standard", "64GB"));
    }

    @Test
    void usableMemoryIsWhatTheEditionUses() {
        assertEquals(Capacity.ofGiB(4),
                Judged.verdict(new SystemUses(), setup("Windows 10 Pro 32-bit", "8GB")).operation().usable());
        assertEquals(Capacity.ofGiB(8),
                Judged.verdict(new SystemUses(), setup("Windows 10 Pro", "8GB")).operation().usable());
    }

    @Test
    void aNameThatLeavesTheLimitOpenIsACaution() {
        assertEquals(Weight.CAUTION, weight("Windows 10 Pro", "8GB"));
        assertEquals(Weight.PASSES, weight("Windows 10 Pro", "4GB"));
        assertEquals(Weight.CAUTION, weight("Windows 11", "256GB"));
    }

    @Test
    void otherSystemsAndReleasesSayNothing() {
        assertEquals(Weight.PASSES, weight("Debian 12", "256GB"));
        assertEquals(Weight.PASSES, weight("Windows 8.1 Pro", "256GB"));
        assertEquals(Optional.empty(), SystemLimit.of("Windows 8.1 Pro").most());
    }

    @Test
    void everyEditionAgreesWithTheTableOfMicrosoftsPage() throws IOException {
        Path file = OutsideData.file("tables/windows-physical-memory-limits.tsv");
        List<String> printed = Files.readAllLines(file).stream().filter(line -> !line.startsWith("#"))
                .map(line -> line.replace('\u00a0', ' ')).toList();
        for (WindowsEdition edition : WindowsEdition.all()) {
            edition.limit32().ifPresent(limit -> assertPrinted(printed, edition.name(), "X86", limit));
            edition.limit64().ifPresent(limit -> assertPrinted(printed, edition.name(), "X64", limit));
        }
        assertEquals(40, WindowsEdition.all().size());
    }

    private static void assertPrinted(List<String> printed, String edition, String architecture, Capacity limit) {
        long gibibytes = limit.mebibytes() / 1024;
        String text = gibibytes == 0 ? limit.mebibytes() + " MB"
                : gibibytes >= 1024 ? gibibytes / 1024 + " TB" : gibibytes + " GB";
        assertTrue(printed.contains(edition + "\t" + architecture + "\t" + text),
                () -> "%s %s %s is not in the table".formatted(edition, architecture, text));
    }
}
