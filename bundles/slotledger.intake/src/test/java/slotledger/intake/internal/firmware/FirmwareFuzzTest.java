package slotledger.intake.internal.firmware;

import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.code_intelligence.jazzer.junit.FuzzTest;
import java.util.ArrayList;
import java.util.List;
import slotledger.firmware.FirmwareReader;
import slotledger.firmware.FirmwareReading;
import slotledger.model.finding.Finding;
import slotledger.model.source.Place;

/**
 * Searches, led by which code is reached, for content that makes a decoder or reader throw, hang or say nothing.
 * Without the environment variable JAZZER_FUZZ only the inputs beside this test are read; with it, one of the
 * two searches runs at a time.
 */
class FirmwareFuzzTest {

    @FuzzTest(maxDuration = "30s")
    void halfAMinuteOfSearchFindsNothingThatThrows(byte[] content) {
        read(content);
    }

    @FuzzTest(maxDuration = "10m")
    void tenMinutesOfSearchFindNothingThatThrows(byte[] content) {
        read(content);
    }

    private static void read(byte[] content) {
        List<FirmwareReading> readings = new FirmwareReader().read("K-17.bin", content);
        assertNotEquals(List.of(), readings, "every content has a reading");
        for (FirmwareReading reading : readings) {
            List<Finding> findings = new ArrayList<>();
            if (reading instanceof FirmwareReading.OfTable table) {
                boolean machine = new MachineReader(findings::add).read(table.table(), Place.ofFile(reading.place()))
                        .map(MachineReader.Found::report).isPresent();
                assertTrue(machine || !findings.isEmpty(), "a table is a machine or a finding");
            } else if (reading instanceof FirmwareReading.OfModule module) {
                SpdKind.of(module.module());
            } else {
                assertTrue(!reading.problems().isEmpty(), "what is refused says why");
            }
        }
    }
}
