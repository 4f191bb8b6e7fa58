package slotledger.rules.internal.capacity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.unit.Capacity;
import slotledger.testkit.OutsideData;

/** Outside check: Microsoft, Memory Limits for Windows and Windows Server Releases. */
class WindowsEditionTest {

    @Test
    void aReleaseThatIsNotListedHasNoLimit() {
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
