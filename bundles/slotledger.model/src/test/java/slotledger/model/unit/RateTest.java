package slotledger.model.unit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.testkit.OutsideData;

class RateTest {

    /**
     * System x3550 M4 Installation and Service Guide p. 46 prints 6.40, 8.53, 10.66, 12.80 and 14.93 GB/s for DDR3;
     * System x3500 M5 guide p. 74 prints 12.80, 14.93 and 17.00 GB/s for DDR4 (there 17.07, cut to 17.00).
     */
    @ParameterizedTest
    @CsvSource({"800, 6400", "1066, 8533", "1333, 10667", "1600, 12800", "1866, 14933", "2133, 17067"})
    void peakBandwidthIsWhatTheGuidesPrint(int grade, long megabytes) {
        assertEquals(megabytes, Math.round(Rate.of(grade).peak(64).kilobytesPerSecond() / 1000.0));
    }

    @ParameterizedTest
    @CsvSource({"2666, 2666667", "2667, 2666667", "533, 533333", "5600, 5600000", "711, 711000", "66, 66667"})
    void roundedGradesStandForMultiplesOfAThirdOfAHundred(int grade, long kilotransfers) {
        assertEquals(kilotransfers, Rate.of(grade).kilotransfers());
    }

    /** Every 64-bit row of the table of speed names, whose sources stand in its last column. */
    @Test
    void everySpeedNameHasItsPeakBandwidth() throws IOException {
        List<String> wrong = new ArrayList<>();
        int rows = 0;
        for (String line : Files.readAllLines(OutsideData.file("tables/speed-grades.tsv"))) {
            String[] cells = line.split("\t");
            if (cells[0].matches("(SDR|DDR\\d?)")) {
                rows++;
                int grade = (int) Double.parseDouble(cells[2]);
                double peak = Rate.of(grade).peak(64).kilobytesPerSecond() / 1000.0;
                if (Math.abs(peak - Double.parseDouble(cells[4])) > 1) {
                    wrong.add(line + " but computed " + peak);
                }
            }
        }
        assertEquals(List.of(), wrong);
        assertEquals(37, rows);
    }
}
