package slotledger.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class WriteAfterInventoryTest {

    private static final Path DEMO_FLEET = Path.of("../../demo-fleet");

    private static final String HOLDS = """
            {"type": "holds", "kind": {"generation": "ddr4", "capacity": {"kibibytes": 8388608},
             "rate": {"megatransfers": 2666}}}""";
    private static final String EMPTY = """
            {"type": "empty"}""";
    private static final String MACHINE = """
            {"machine": {"tag": "U-%d", "serial": "S%d", "where": {"site": "Upper", "room": "2"}, "role": "Lab PC",
             "costCentre": "CC, 1", "operatingSystem": "Debian 12", "board": "kestrin-kb510", "processors": 1,
             "redundancy": "REDUNDANCY",
             "population": {"contents": {"A1": EMPTY, "A2": HOLDS}}},
             "after": {"contents": {"A1": HOLDS, "A2": HOLDS}}, "moves": [{}]}""".replace("HOLDS", HOLDS)
            .replace("EMPTY", EMPTY).replace("REDUNDANCY", "none");

    @TempDir
    private Path folder;

    @Test
    void eachMachineIsListedAsPlannedButEveryTwentySeventhAsItWas() throws IOException {
        List<String> lines = written(54);
        assertEquals("U-1,S1,Kestrin,KB-510,Upper,2,Lab PC,\"CC, 1\",Debian 12,1,,"
                + "\"A1: 8GB DDR4-2666, A2: 8GB DDR4-2666\"", lines.get(1));
        assertEquals(List.of("U-27", "U-54"), lines.stream().filter(line -> line.contains("A1: empty"))
                .map(line -> line.substring(0, line.indexOf(','))).toList());
    }

    @Test
    void aMirroredMachineIsListedAsSuch() throws IOException {
        List<String> lines = written(MACHINE.replace("\"none\"", "\"mirrored\"").formatted(1, 1));
        assertTrue(lines.get(1).contains("Debian 12,1,mirrored,"), lines.get(1));
    }

    @Test
    void aSlipThatCannotHappenToOneMachineWaitsForAnother() {
        Map<String, String> full = Map.of("A1", "8GB DDR4-2666", "A2", "8GB DDR4-2666");
        Map<String, String> half = Map.of("A1", "8GB DDR4-2666", "A2", "empty");
        assertEquals(Optional.empty(), Slip.OTHER_SLOT.happenTo(full));
        assertEquals(Optional.of(Map.of("A1", "empty", "A2", "8GB DDR4-2666")), Slip.OTHER_SLOT.happenTo(half));
    }

    @Test
    void theCheckedInListHasNoMachineThatTheInventoryBeforeDoesNotHave() throws IOException {
        List<String> lines = Files.readAllLines(DEMO_FLEET.resolve("after/inventory-after.csv"));
        assertTrue(lines.size() > 500, "rows: " + lines.size());
        List<String> serials = new DemoMachines().make().stream().map(DemoMachine::serial).toList();
        for (String line : lines.subList(1, lines.size())) {
            String serial = line.split(",")[1];
            assertTrue(serial.isEmpty() || serials.contains(serial), line);
        }
    }

    @Test
    void aFileThatIsNoPlanIsRefused() throws IOException {
        Path other = Files.writeString(folder.resolve("other.json"), "{}");
        assertThrows(IOException.class, () -> WriteAfterInventory.write(other, folder));
    }

    private List<String> written(int machines) throws IOException {
        return written(IntStream.rangeClosed(1, machines).mapToObj(number -> MACHINE.formatted(number, number))
                .collect(Collectors.joining(",")));
    }

    private List<String> written(String list) throws IOException {
        Path plan = Files.writeString(folder.resolve("plan.json"), "{\"plan\": {\"machines\": [" + list + "]}}");
        Files.createDirectories(folder.resolve("boards"));
        Files.copy(DEMO_FLEET.resolve("boards/kestrin-kb510.yaml"), folder.resolve("boards/kestrin-kb510.yaml"));
        WriteAfterInventory.write(plan, folder);
        return Files.readAllLines(folder.resolve("after/inventory-after.csv"));
    }
}
