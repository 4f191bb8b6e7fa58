package slotledger.intake.internal.firmware;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.logging.Logger;
import org.junit.jupiter.api.Test;
import slotledger.firmware.FirmwareReader;
import slotledger.firmware.FirmwareReading;
import slotledger.model.finding.Finding;
import slotledger.model.source.Place;

/**
 * Outside check: every real machine becomes a machine or a finding, and odd ones are as frequent as was counted in the
 * whole collection, by other code, among the 162,327 machines that report memory.
 */
class RealMachinesTest {

    private static final Logger LOG = Logger.getLogger(RealMachinesTest.class.getName());
    private static final double COLLECTION = 162_327;
    private static final int SAMPLE = 40_779;

    private final Map<String, Integer> machinesByCode = new HashMap<>();
    private final Map<String, Integer> counts = new HashMap<>();

    @Test
    void everyMachineIsAMachineOrAFindingAndOddOnesAreAsFrequentAsPublished() throws Exception {
        Set<String> places = new HashSet<>();
        int read = RealMachines.each((path, listing, line) -> machine(path, listing, line, places));
        assertEquals(SAMPLE, read);
        assertEquals(read, counts.get("machines") + counts.get("only a finding"), counts.toString());
        assertEquals(read, places.size(), "each at a place of its own");
        LOG.info(() -> counts + " " + machinesByCode);
        // linuxhw/DMI @57b21bc6, counted in the whole collection; see the class comment.
        near("at least one empty slot", 69_971, counts.get("an empty slot"));
        near("duplicate slot name", 27_284, machinesByCode.get("firmware-same-name")
                + machinesByCode.get("firmware-same-names"));
        near("duplicate even with bank locator", 2_337, machinesByCode.get("firmware-same-names"));
        near("installed more than the reported maximum", 6_620, machinesByCode.get("firmware-limit")
                + machinesByCode.getOrDefault("firmware-limit-unit", 0));
        near("count of the array differs", 6_697, machinesByCode.get("firmware-count"));
        near("72 or 80 bits, and nothing corrected", 770, counts.get("wide and nothing corrected"));
        near("corrects, and no check bits", 2_247, machinesByCode.get("firmware-checks-missing"));
        near("DDR4 as RIMM", 130, counts.get("DDR4 as RIMM"));
    }

    /**
     * A quarter drawn at random strays from the whole by some five standard deviations at most; a tenth more is
     * allowed because the published numbers were counted with rules of their own.
     */
    private static void near(String what, int published, int found) {
        double expected = published * (SAMPLE / COLLECTION);
        double allowed = 5 * Math.sqrt(expected) + expected / 10;
        LOG.info(() -> "%s: %d found, %.0f expected, %.0f off allowed".formatted(what, found, expected, allowed));
        assertTrue(Math.abs(found - expected) <= allowed,
                "%s: %d found, %.0f expected".formatted(what, found, expected));
    }

    private void machine(String path, String listing, JsonNode line, Set<String> places) {
        List<FirmwareReading> readings =
                new FirmwareReader().read(path, listing.getBytes(StandardCharsets.UTF_8));
        assertEquals(1, readings.size(), path);
        if (!(readings.get(0) instanceof FirmwareReading.OfTable table)) {
            // A few small boards told nothing at all.
            assertTrue(!readings.get(0).problems().isEmpty(), path);
            assertEquals(0, line.get("devs").size(), path);
            count("only a finding");
            places.add(path);
            return;
        }
        Set<String> codes = new HashSet<>();
        List<Finding> findings = new ArrayList<>();
        Optional<MachineReader.Found> found =
                new MachineReader(findings::add).read(table.table(), Place.ofFile(path));
        findings.forEach(finding -> codes.add(finding.code()));
        codes.forEach(code -> machinesByCode.merge(code, 1, Integer::sum));
        assertTrue(found.isPresent() || !findings.isEmpty(), path);
        count(found.isPresent() ? "machines" : "only a finding");
        places.add(found.map(each -> each.machine().place()).orElseGet(() -> findings.get(0).place()).file());
        if (found.isEmpty()) {
            return;
        }
        assertTrue(codes.contains("firmware-no-main-memory")
                || found.get().machine().slots().size() == line.get("devs").size(), path);
        if (found.get().machine().slots().stream().anyMatch(slot -> slot.content().isEmpty())) {
            count("an empty slot");
        }
        Set<String> widths = new HashSet<>();
        boolean rimm = false;
        for (JsonNode device : line.get("devs")) {
            rimm |= device.path("Form Factor").asText().equals("RIMM") && device.path("Type").asText().equals("DDR4");
            if (device.path("Size").asText().matches("\\d.*")) {
                widths.add(device.path("Total Width").asText());
            }
        }
        // The published numbers go by the whole width alone.
        countIf(rimm, "DDR4 as RIMM");
        countIf(codes.contains("firmware-checks-unused")
                && (widths.contains("72 bits") || widths.contains("80 bits")), "wide and nothing corrected");
    }

    private void countIf(boolean is, String what) {
        if (is) {
            count(what);
        }
    }

    private void count(String what) {
        counts.merge(what, 1, Integer::sum);
    }
}
