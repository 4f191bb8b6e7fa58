package slotledger.model.family;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.testkit.OutsideData;

/**
 * Outside check: the table of speed names, whose notes name the guides that print them (System x3550 M4 guide p.46,
 * System x3500 M5 guide p.74, Abit CX6 manual for PC800, X-bit labs for the 32-bit RIMM).
 */
class SpeedGradesTest {

    @Test
    void everyGradeHasTheNameTheTrueRateAndThePeakOfTheTable() throws IOException {
        List<String> lines = Files.readAllLines(OutsideData.file("tables/speed-grades.tsv"));
        int checked = 0;
        for (String line : lines.subList(1, lines.size())) {
            String[] cells = line.split("\t");
            Family family = family(cells[0]);
            Grade grade = family.grades().stream().filter(each -> each.name().equals(cells[3])).findFirst()
                    .orElseThrow(() -> new AssertionError("no grade of " + family.id() + " for " + line));
            assertEquals(Double.parseDouble(cells[2]), grade.kilotransfers() / 1000.0, 0.01, line);
            // The table computes 266.67 x 8 = 2133.4 where 266 2/3 x 8 is 2133.3.
            double peak = grade.peak(family.dataBits().orElseThrow()).kilobytesPerSecond() / 1000.0;
            assertEquals(Double.parseDouble(cells[4]), peak, 0.11, line);
            checked++;
        }
        assertEquals(45, checked);
    }

    private static Family family(String text) {
        return switch (text) {
            case "RDRAM 16-bit" -> Families.of(Generation.RDRAM, Form.RIMM_184).get(0);
            case "RDRAM 32-bit" -> Families.of(Generation.RDRAM, Form.RIMM_232).get(0);
            default -> Families.of(Generation.valueOf(text), Form.DIMM, Optional.of(
                    slotledger.model.module.Buffering.UNBUFFERED)).orElseThrow();
        };
    }
}
