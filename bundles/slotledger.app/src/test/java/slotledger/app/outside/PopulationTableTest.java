package slotledger.app.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slotledger.app.outside.PopulationTable.loadReduced;
import static slotledger.app.outside.PopulationTable.numbers;
import static slotledger.app.outside.PopulationTable.registered;
import static slotledger.app.outside.PopulationTable.system;
import static slotledger.app.outside.PopulationTable.table;
import static slotledger.app.outside.PopulationTable.texts;
import static slotledger.app.outside.PopulationTable.unbuffered;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.Population;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Operation;

/**
 * Outside check: which sockets fourteen systems fill and how fast they run, from their makers' manuals. The board files
 * beside this test are typed from the manuals each of them names; the rows are read in place.
 */
class PopulationTableTest {

    /** What is said of each system; all of it is checked below but for the words of a note. */
    private static final Map<String, Set<String>> CHECKED = checked();

    private static Map<String, Set<String>> checked() {
        Map<String, Set<String>> checked = new TreeMap<>();
        checked.put("PowerEdge T630", Set.of("channels", "rows", "max_speed_by_DPC"));
        checked.put("PowerEdge R740xd2", Set.of("seq_one_cpu", "exceptions", "channel_note"));
        checked.put("System x3500 M5", Set.of("max_speed_by_DPC"));
        checked.put("System x3550 M4", Set.of("max_speed_by_DPC"));
        checked.put("System x3550 M5", Set.of("sets_one_cpu", "sets_two_cpu", "usable"));
        checked.put("System x3650 M4 BD", Set.of("channels", "seq_one_cpu", "seq_two_cpu"));
        checked.put("ThinkServer", Set.of("seq_cpu1", "seq_cpu2", "dead_connectors"));
        checked.put("System x3250 M5", Set.of("sets"));
        checked.put("HP desktop", Set.of("channels", "seq", "note"));
        checked.put("ASUS desktop", Set.of("n1", "n2", "n4"));
        checked.put("PowerEdge R860", Set.of("max_speed_by_DPC"));
        checked.put("XC750xa", Set.of("max_speed_by_DPC"));
        checked.put("PowerEdge SC1425", Set.of("rules"));
        checked.put("D850GB", Set.of("banks", "rules", "capacity_MB_by_chips"));
        return checked;
    }

    /** Each channel of the board file holds the sockets the table prints for it. */
    private static void assertChannels(JsonNode printed, PrintedBoard board) {
        printed.properties().forEach(entry -> assertEquals(new TreeSet<>(texts(entry.getValue())),
                new TreeSet<>(board.board().slots().stream()
                        .filter(slot -> slot.channel().equals(entry.getKey()))
                        .map(slot -> slot.label())
                        .toList()), entry.getKey()));
    }

    private static void assertSequence(PrintedBoard board, List<String> sequence, ModuleKind kind) {
        for (int count = 1; count <= sequence.size(); count++) {
            board.assertChosen(sequence.subList(0, count), kind);
        }
    }

    /** So many modules in a channel run at the printed rate, and no faster where they are sold as faster. */
    private static void assertRates(JsonNode byCount, PrintedBoard board, ModuleKind kind) {
        List<String> first = board.board().slots().stream()
                .filter(slot -> slot.channel().equals(board.board().channels().get(0).name()))
                .map(slot -> slot.label())
                .toList();
        byCount.properties().forEach(entry -> {
            if (entry.getKey().matches("\\d")) {
                List<String> slots = first.subList(0, Integer.parseInt(entry.getKey()));
                assertEquals(Optional.of(Rate.of(entry.getValue().asInt())), board.operate(slots, kind).rate(),
                        entry.toString());
            }
        });
    }

    @Test
    void everySystemAndEveryThingSaidOfItIsChecked() throws IOException {
        Map<String, Set<String>> said = new TreeMap<>();
        for (JsonNode system : table()) {
            Set<String> names = new TreeSet<>();
            system.fieldNames().forEachRemaining(names::add);
            names.removeAll(Set.of("system", "source"));
            String known = CHECKED.keySet().stream().filter(system.get("system").asText()::contains)
                    .findFirst().orElse(system.get("system").asText());
            said.put(known, names);
        }
        assertEquals(CHECKED, said);
    }

    @Test
    void thePowerEdgeT630() throws IOException {
        JsonNode printed = system("PowerEdge T630");
        PrintedBoard board = PrintedBoard.read("dell-t630");
        assertChannels(printed.get("channels"), board);
        for (JsonNode row : printed.get("rows")) {
            List<String> slots = texts(row.get("slots"));
            assertEquals(row.get("n").asInt(), slots.size());
            List<Integer> speeds = numbers(row.get("speed"));
            for (int sold : List.of(2400, 2133)) {
                ModuleKind kind = registered(Generation.DDR4, row.get("each_GB").asInt(), sold);
                board.assertChosen(slots, kind);
                Operation runs = board.operate(slots, kind);
                int expected = speeds.size() == 1 ? speeds.get(0) : sold;
                assertTrue(speeds.contains(expected));
                assertEquals(Optional.of(Rate.of(expected)), runs.rate(), row.toString());
                assertEquals(Capacity.ofGiB(row.get("total_GB").asInt()), runs.installed());
            }
        }
        assertEquals(7, printed.get("rows").size());
        Operation twelve = board.operate(board.sockets(), registered(Generation.DDR4, 4, 2400));
        assertEquals("The board runs no faster with 3 registered modules in channel 0.", twelve.rateWhy());
        assertEquals("quad channel", twelve.mode().toString());
        assertTrue(twelve.ecc());
        JsonNode rates = printed.get("max_speed_by_DPC");
        assertRates(rates.get("RDIMM"), board, registered(Generation.DDR4, 8, 2666));
        assertRates(rates.get("RDIMM"), board, registered(Generation.DDR4, 8, 2666).withRanks(2)
                .with(ChipSize.ofGbit(4)));
        assertRates(rates.get("LRDIMM"), board, loadReduced(2666));
        assertTrue(board.objections(List.of("A1"), loadReduced(2400).with(Buffering.REGISTERED)).toString()
                .contains("module-ranks"));
    }

    @Test
    void thePowerEdgeR740xd2() throws IOException {
        JsonNode printed = system("R740xd2");
        PrintedBoard board = PrintedBoard.read("dell-r740xd2");
        assertEquals("as printed for the same board in the GigaVUE-FM appliance guide: "
                + "A1/A7, A2/A8, A3, A4/A9, A5/A10, A6", printed.get("channel_note").asText());
        ModuleKind kind = registered(Generation.DDR4, 16, 2666);
        JsonNode exceptions = printed.get("exceptions");
        assertEquals(3, exceptions.size());
        List<String> sequence = texts(printed.get("seq_one_cpu"));
        for (int count = 1; count <= sequence.size(); count++) {
            JsonNode exception = exceptions.get("1cpu_" + count);
            board.assertChosen(exception == null ? sequence.subList(0, count) : texts(exception), kind);
        }
        board.with(2).assertChosen(texts(exceptions.get("2cpu_8")), kind);
    }

    @Test
    void theSystemX3500M5() throws IOException {
        JsonNode rates = system("x3500 M5").get("max_speed_by_DPC");
        PrintedBoard board = PrintedBoard.read("lenovo-x3500-m5");
        assertRates(rates.get("RDIMM"), board, registered(Generation.DDR4, 16, 2400));
        assertRates(rates.get("LRDIMM"), board, loadReduced(2400));
        assertEquals(2, rates.size());
    }

    @Test
    void theSystemX3550M4() throws IOException {
        JsonNode rates = system("x3550 M4").get("max_speed_by_DPC");
        assertRates(rates.get("RDIMM"), PrintedBoard.read("ibm-x3550-m4"), registered(Generation.DDR3, 4, 1866));
        assertEquals(1, rates.size());
    }

    @Test
    void theSystemX3550M5Mirrored() throws IOException {
        JsonNode printed = system("x3550 M5");
        assertEquals("half of installed", printed.get("usable").asText());
        ModuleKind kind = registered(Generation.DDR4, 8, 2133);
        for (int processors = 1; processors <= 2; processors++) {
            JsonNode sets = printed.get(processors == 1 ? "sets_one_cpu" : "sets_two_cpu");
            PrintedBoard board = PrintedBoard.read("lenovo-x3550-m5").with(processors).mirrored();
            List<String> slots = new ArrayList<>();
            for (JsonNode set : sets) {
                slots.addAll(texts(set));
                board.assertChosen(slots, kind);
                Operation runs = board.operate(slots, kind);
                assertEquals(runs.installed().kibibytes(), 2 * runs.usable().kibibytes(), slots.toString());
            }
        }
    }

    @Test
    void theSystemX3650M4Bd() throws IOException {
        JsonNode printed = system("x3650 M4 BD");
        PrintedBoard board = PrintedBoard.read("ibm-x3650-m4-bd");
        assertChannels(printed.get("channels"), board);
        ModuleKind kind = registered(Generation.DDR3, 4, 1600);
        assertSequence(board, texts(printed.get("seq_one_cpu")), kind);
        assertSequence(board.with(2), texts(printed.get("seq_two_cpu")), kind);
    }

    /** The same guide: mirrored memory leaves a third, and channel 1 doesn't count. */
    @Test
    void theSystemX3650M4BdMirrored() throws IOException {
        PrintedBoard board = PrintedBoard.read("ibm-x3650-m4-bd").mirrored();
        ModuleKind kind = registered(Generation.DDR3, 4, 1600);

        assertEquals(Capacity.ofGiB(8), board.operate(List.of("6", "1", "3", "5", "2", "4"), kind).usable());
        assertEquals(Capacity.ofGiB(8), board.operate(board.sockets(), kind).usable());
    }

    @Test
    void theThinkServer() throws IOException {
        JsonNode printed = system("ThinkServer");
        PrintedBoard board = PrintedBoard.read("lenovo-thinkserver-3836");
        ModuleKind kind = registered(Generation.DDR3, 4, 1333);
        List<String> one = texts(printed.get("seq_cpu1"));
        List<String> two = texts(printed.get("seq_cpu2"));
        assertSequence(board, one, kind);
        List<String> both = new ArrayList<>();
        for (int i = 0; i < one.size(); i++) {
            both.add(one.get(i));
            both.add(two.get(i));
            board.with(2).assertChosen(both, kind);
        }
        List<String> dead = texts(printed.get("dead_connectors"));
        assertEquals(4, dead.size());
        for (String connector : dead) {
            Population population = board.population(List.of("3"), kind).with(connector, kind);
            assertTrue(board.with(2).objections(population).toString().contains("dead-connector"), connector);
        }
    }

    @Test
    void theSystemX3250M5() throws IOException {
        PrintedBoard board = PrintedBoard.read("lenovo-x3250-m5");
        ModuleKind kind = unbuffered(Generation.DDR3, 4, 1600, ErrorCheck.ECC);
        List<String> slots = new ArrayList<>();
        for (JsonNode set : system("x3250 M5").get("sets")) {
            slots.addAll(texts(set));
            board.assertChosen(slots, kind);
        }
        assertEquals(4, slots.size());
        assertFalse(board.objections(List.of("1"), kind).isEmpty());
        assertFalse(board.objections(List.of("1", "3", "2"), kind).isEmpty());
    }

    @Test
    void theHpDesktop() throws IOException {
        JsonNode printed = system("HP desktop");
        PrintedBoard board = PrintedBoard.read("hp-8fj83ea");
        assertChannels(printed.get("channels"), board);
        ModuleKind kind = unbuffered(Generation.DDR4, 8, 2666, ErrorCheck.NONE);
        assertSequence(board, texts(printed.get("seq")), kind);
        assertTrue(board.objections(List.of("4"), kind.with(ChipWidth.X4).with(ChipSize.ofGbit(4))).toString()
                .contains("chip-width"));
    }

    @Test
    void theAsusDesktopBoards() throws IOException {
        JsonNode printed = system("ASUS desktop");
        PrintedBoard board = PrintedBoard.read("asus-q670m");
        ModuleKind kind = unbuffered(Generation.DDR5, 16, 4800, ErrorCheck.NONE);
        for (int count : List.of(1, 2, 4)) {
            List<String> slots = texts(printed.get("n" + count));
            assertEquals(count, slots.size());
            board.assertChosen(slots, kind);
        }
        assertEquals("dual channel", board.operate(List.of("A2", "B2"), kind).mode().toString());
    }

    @Test
    void thePowerEdgeR860() throws IOException {
        JsonNode rates = system("R860").get("max_speed_by_DPC");
        ModuleKind kind = ModuleKind.of(Generation.DDR5, Form.DIMM, Capacity.ofGiB(256)).with(Buffering.REGISTERED)
                .with(ErrorCheck.ECC).with(Rate.of(5600)).withRanks(8).with(ChipWidth.X4).with(ChipSize.ofGbit(16));
        assertRates(rates.get("8R 256 GB"), PrintedBoard.read("dell-r860"), kind);
        assertEquals(1, rates.size());
    }

    @Test
    void theXc750xa() throws IOException {
        JsonNode rates = system("XC750xa").get("max_speed_by_DPC");
        PrintedBoard board = PrintedBoard.read("dell-xc750xa");
        assertRates(rates.get("RDIMM"), board, registered(Generation.DDR4, 16, 3200));
        assertRates(rates.get("LRDIMM"), board, loadReduced(3200));
        assertEquals(2, rates.size());
    }
}
