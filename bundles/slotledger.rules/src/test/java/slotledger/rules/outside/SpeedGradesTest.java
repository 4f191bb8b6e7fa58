package slotledger.rules.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.unit.Bandwidth;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.testkit.OutsideData;

/** Outside check: the names the trade gives to rates, with the bandwidths printed in the guides named in the table. */
class SpeedGradesTest {

    @Test
    void thePeakOfOneChannelIsTheBandwidthInTheName() throws IOException {
        int checked = 0;
        for (String line : Files.readAllLines(OutsideData.file("tables/speed-grades.tsv"))) {
            String[] cells = line.split("\t");
            if (!cells[0].matches("DDR\\d?")) {
                continue;
            }
            int grade = Integer.parseInt(cells[1].split("-")[1]);
            Board board = BoardText.board("none", "channel A 1 A1\ntakes " + cells[0] + " DIMM");
            Bandwidth peak = Judged.byAll(board, "A1: 512MB %s-%d DIMM".formatted(cells[0], grade)).operation().peak();
            double printed = Double.parseDouble(cells[4]);
            // The table computes 266.67 x 8 = 2133.4 where 266 2/3 x 8 is 2133.3.
            assertEquals(printed, peak.kilobytesPerSecond() / 1000.0, 0.11, line);
            int name = Integer.parseInt(cells[3].replaceAll("PC\\d?-", ""));
            assertTrue(Math.abs(name - printed) < 100, line);
            checked++;
        }
        assertEquals(34, checked);
    }

    /** System x3550 M4 guide p.46, System x3500 M5 guide p.74, and two channels as a hardware site prints them. */
    @Test
    void printedBandwidthsAreMet() {
        for (String row : List.of(
                "DDR3-1333 10.7", "DDR3-1866 14.9", "DDR4-1866 14.9", "DDR4-2133 17.1", "DDR5-4800 38.4")) {
            String[] cells = row.split(" ");
            Board board = BoardText.board("none", "channel A 1 A1\ntakes " + cells[0].split("-")[0] + " DIMM");
            assertEquals(cells[1] + " GB/s",
                    Judged.byAll(board, "A1: 4GB " + cells[0] + " DIMM").operation().peak().toString());
        }
        Board three = BoardText.board("none", "channel A 1 A\nchannel B 1 B\nchannel C 1 C\ntakes DDR3 DIMM");
        assertEquals("32.0 GB/s", Judged.byAll(three, "A B C: 2GB DDR3-1333 DIMM").operation().peak().toString());
        assertEquals("21.3 GB/s", Judged.byAll(three, "A B: 2GB DDR3-1333 DIMM").operation().peak().toString());
    }
}
