package slotledger.rules.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.unit.Bandwidth;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.testkit.OutsideData;

/**
 * Outside check: names of RDRAM speeds and their bandwidth; PC800 = 1.6 GB/s is printed in the Abit CX6 manual, the
 * names of 32-bit RIMMs by X-bit labs on the ASUS P4T533. PC600 and PC700 are nominal names, and left out.
 */
class RdramBandwidthTest {

    private static final Board NARROW = BoardText.board("none", "channel A 1 A1\ntakes RDRAM RIMM_184");
    private static final Board WIDE = BoardText.board("none", "channel A 1 spans=2 A1\ntakes RDRAM RIMM_232");

    @Test
    void aModuleHasTheBandwidthOfItsName() throws IOException {
        int checked = 0;
        for (String line : Files.readAllLines(OutsideData.file("tables/speed-grades.tsv"))) {
            String[] cells = line.split("\t");
            if (!cells[0].startsWith("RDRAM") || cells[1].matches("PC[67]00")) {
                continue;
            }
            boolean wide = cells[0].contains("32-bit");
            int rate = (int) Double.parseDouble(cells[2]);
            String module = "256MB RDRAM-%d %s".formatted(rate, wide ? "RIMM_232" : "RIMM_184");
            Bandwidth peak = Judged.byAll(wide ? WIDE : NARROW, "A1: " + module).operation().peak();
            assertEquals(Double.parseDouble(cells[4]), peak.kilobytesPerSecond() / 1000.0, 0.11, line);
            checked++;
        }
        assertEquals(6, checked);
        assertEquals("1.6 GB/s", Judged.byAll(NARROW, "A1: 256MB RDRAM-800 RIMM_184").operation().peak().toString());
    }
}
