package slotledger.app.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slotledger.catalog.ResolvedFleet;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.source.Place;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Verdict;
import slotledger.testkit.OutsideData;

/**
 * Outside check: the memory part of a listing of a Dell Dimension 8100 in a public forum thread of 2010-01-30. Two of
 * four sockets hold RIMMs; of the other two the firmware says "No Module Installed".
 */
class RimmMachineTest {

    private static String listing() throws IOException {
        return Files.readString(OutsideData.file("smbios/rimm-text/dimension-8100.dmidecode-2.9.txt"),
                StandardCharsets.UTF_8);
    }

    private static List<ObservedSlot> slots() throws IOException {
        List<ObservedSlot> slots = new ArrayList<>();
        Matcher device = Pattern.compile("Size: (?:(\\d+) MB|No Module Installed)\\R[^\\f]*?Locator: (\\w+)")
                .matcher(listing());
        while (device.find()) {
            SlotContent content = device.group(1) == null ? SlotContent.EMPTY
                    : SlotContent.of(ModuleKind.of(Generation.RDRAM, Form.RIMM_184,
                            Capacity.ofMiB(Long.parseLong(device.group(1)))));
            slots.add(new ObservedSlot(Optional.of(device.group(2)), content, "", "", Place.NOWHERE));
        }
        return slots;
    }

    @Test
    void theSocketsThatFirmwareCallsEmptyHoldContinuityModules() throws IOException {
        PrintedBoard board = PrintedBoard.read("dell-dimension-8100");
        List<ObservedSlot> slots = slots();
        assertEquals(4, slots.size());

        ResolvedFleet resolved = board.resolve(slots);
        Population population = resolved.fleet().machines().get(0).population();

        assertEquals(List.of("RIMM_1", "RIMM_2", "RIMM_3", "RIMM_4"), List.copyOf(population.contents().keySet()));
        for (String socket : List.of("RIMM_3", "RIMM_4")) {
            assertEquals(SlotContent.of(Filler.CONTINUITY_184), population.in(socket));
        }
        assertEquals(List.of("fillers-assumed"), resolved.findings().stream().map(Finding::code).toList());
        Verdict verdict = board.judge(population);
        assertEquals(List.of(), board.objections(population));
        assertTrue(listing().contains("Range Size: " + verdict.operation().installed()));
        assertEquals("dual channel", verdict.operation().mode().toString());
        assertFalse(board.objections(population.with("RIMM_3", SlotContent.EMPTY)).isEmpty());
    }
}
