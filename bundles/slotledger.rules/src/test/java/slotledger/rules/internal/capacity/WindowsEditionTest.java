package slotledger.rules.internal.capacity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
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
    void everyRowOfMicrosoftsPageIsAnswered() throws IOException {
        Set<WindowsEdition> asked = new HashSet<>();
        int rows = 0;
        for (String line : Files.readAllLines(OutsideData.file("tables/windows-physical-memory-limits.tsv"))) {
            String[] cells = line.replace('\u00a0', ' ').split("\t");
            if (line.startsWith("#") || cells[0].equals("edition")) {
                continue;
            }
            rows++;
            String name = cells[0] + switch (cells[1]) {
                case "X86" -> " 32-bit";
                case "IA64" -> " IA64";
                default -> " 64-bit";
            };
            List<WindowsEdition> meant = WindowsEdition.meantBy(name.toLowerCase(Locale.ROOT));
            SystemLimit answer = SystemLimit.of(name);
            if (cells[2].equals("N/A")) {
                // No Starter was made for Itanium; a name that says so is taken for the release.
                assertTrue(cells[1].equals("IA64") || answer.most().isEmpty(), line);
                continue;
            }
            Optional<Capacity> limit = Optional.of(capacity(cells[2]));
            // A release without an edition may mean any of its editions; the page means one of them.
            if (meant.size() == 1) {
                asked.add(meant.get(0));
                assertEquals(limit, answer.least(), line);
                assertEquals(limit, answer.most(), line);
            } else {
                assertTrue(limit.equals(answer.least()) || limit.equals(answer.most()), line + ": " + answer);
                meant.stream().filter(edition -> edition.name().equals(cells[0])).forEach(asked::add);
            }
        }
        assertEquals(119, rows);
        assertEquals(Set.copyOf(WindowsEdition.all()), asked);
    }

    /** "6 TB", "64 GB (16 GB with 4GT)". */
    private static Capacity capacity(String text) {
        String[] words = text.split(" ");
        long number = Long.parseLong(words[0]);
        return switch (words[1]) {
            case "MB" -> Capacity.ofMiB(number);
            case "GB" -> Capacity.ofGiB(number);
            default -> Capacity.ofGiB(1024 * number);
        };
    }
}
