package slotledger.app.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static slotledger.app.outside.PopulationTable.registered;
import static slotledger.app.outside.PopulationTable.system;
import static slotledger.app.outside.PopulationTable.texts;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

/** Outside check: the two systems of the table whose modules go in banks, by the rules their manuals print. */
class BankTablesTest {

    @Test
    void thePowerEdgeSc1425() throws IOException {
        List<String> rules = texts(system("SC1425").get("rules"));
        assertEquals(List.of("one module alone: socket DIMM1_A", "two or more: matched pairs",
                "dual-rank pair must be in bank 1", "no dual-rank in bank 3",
                "dual-rank in bank 2 means bank 3 stays empty"), rules);
        PrintedBoard board = PrintedBoard.read("dell-sc1425");
        ModuleKind single = registered(Generation.DDR2, 1, 400).with(Voltage.ofMillivolts(1800));
        ModuleKind dual = single.withRanks(2).with(ChipSize.ofMbit(512));
        List<String> one = List.of("DIMM1_A", "DIMM1_B");
        List<String> two = List.of("DIMM2_A", "DIMM2_B");
        List<String> three = List.of("DIMM3_A", "DIMM3_B");

        board.assertChosen(List.of("DIMM1_A"), single);
        board.assertChosen(one, single);
        board.assertChosen(joined(one, two), single);
        board.assertChosen(joined(joined(one, two), three), single);
        board.assertChosen(one, dual);
        board.assertChosen(joined(one, two), dual);

        assertFalse(board.objections(List.of("DIMM1_A", "DIMM1_B", "DIMM2_A"), single).isEmpty());
        ModuleKind other = registered(Generation.DDR2, 2, 400).with(Voltage.ofMillivolts(1800));
        assertFalse(board.objections(board.population(one, single).with("DIMM1_B", other)).isEmpty());
        assertEquals(List.of(), board.objections(filled(board, new In(one, dual), new In(two, single))));
        assertEquals(List.of(), board.objections(filled(board,
                new In(one, dual), new In(two, single), new In(three, single))));
        assertFalse(board.objections(filled(board, new In(one, single), new In(two, dual))).isEmpty());
        assertFalse(board.objections(filled(board,
                new In(one, single), new In(two, single), new In(three, dual))).isEmpty());
        assertFalse(board.objections(filled(board,
                new In(one, dual), new In(two, single), new In(three, dual))).isEmpty());
        assertFalse(board.objections(filled(board,
                new In(one, dual), new In(two, dual), new In(three, single))).isEmpty());
    }

    private static List<String> joined(List<String> one, List<String> other) {
        return Stream.concat(one.stream(), other.stream()).toList();
    }

    private record In(List<String> sockets, ModuleKind kind) {
    }

    private static Population filled(PrintedBoard board, In... banks) {
        Population population = board.population(List.of(), banks[0].kind());
        for (In bank : banks) {
            for (String socket : bank.sockets()) {
                population = population.with(socket, bank.kind());
            }
        }
        return population;
    }

    private static ModuleKind rimm(int mebibytes, int mbit, int rate) {
        return ModuleKind.of(Generation.RDRAM, Form.RIMM_184, Capacity.ofMiB(mebibytes)).with(ChipSize.ofMbit(mbit))
                .with(Rate.of(rate)).with(Voltage.ofMillivolts(2500)).with(Buffering.UNBUFFERED)
                .with(mbit % 9 == 0 ? ErrorCheck.ECC : ErrorCheck.NONE)
                .with(mbit % 9 == 0 ? ChipWidth.X18 : ChipWidth.X16);
    }

    @Test
    void theD850Gb() throws IOException {
        JsonNode printed = system("D850GB");
        PrintedBoard board = PrintedBoard.read("intel-d850gb");
        List<String> first = texts(printed.get("banks").get("0"));
        List<String> second = texts(printed.get("banks").get("1"));
        assertEquals(List.of(first, second),
                board.board().banks().list().stream().map(bank -> bank.slots()).toList());
        assertEquals(List.of("bank 0 first", "the two modules of a bank identical in speed, size, density",
                "unused bank takes two continuity modules",
                "bank 1 may differ in size/density from bank 0 but must match its speed",
                "ECC only if every module is ECC"), texts(printed.get("rules")));
        ModuleKind kind = rimm(256, 256, 800);

        board.assertChosen(first, kind);
        board.assertChosen(joined(first, second), kind);
        assertEquals(Optional.of(Filler.CONTINUITY_184), board.board().fill().blank());
        Population half = board.population(first, kind);
        assertEquals(List.of(), board.objections(half));
        assertFalse(board.objections(half.with("RIMM3", SlotContent.EMPTY).with("RIMM4", SlotContent.EMPTY)).isEmpty());
        assertFalse(board.objections(second, kind).isEmpty());
        assertFalse(board.objections(List.of("RIMM1"), kind).isEmpty());
        assertFalse(board.objections(half.with("RIMM2", rimm(128, 256, 800))).isEmpty());
        assertFalse(board.objections(half.with("RIMM2", rimm(256, 128, 800))).isEmpty());
        assertFalse(board.objections(half.with("RIMM2", rimm(256, 256, 600))).isEmpty());
        assertEquals(List.of(), board.objections(filled(board,
                new In(first, kind), new In(second, rimm(64, 128, 800)))));
        assertFalse(board.objections(filled(board,
                new In(first, kind), new In(second, rimm(256, 256, 600)))).isEmpty());
        ModuleKind checked = rimm(256, 288, 800);
        assertTrue(board.operate(joined(first, second), checked).ecc());
        assertFalse(board.judge(filled(board, new In(first, checked), new In(second, kind))).operation().ecc());
        assertFalse(board.operate(first, kind).ecc());
    }

    /** Each printed module is one its chips can make, and with one chip more or less it isn't. */
    @Test
    void theModulesOfTheD850Gb() throws IOException {
        PrintedBoard board = PrintedBoard.read("intel-d850gb");
        int rows = 0;
        JsonNode table = system("D850GB").get("capacity_MB_by_chips");
        for (Map.Entry<String, JsonNode> size : table.properties()) {
            List<Integer> mbits =
                    Stream.of(size.getKey().replace(" Mbit", "").split("/")).map(Integer::valueOf).toList();
            for (Map.Entry<String, JsonNode> row : size.getValue().properties()) {
                for (int mbit : mbits) {
                    int mebibytes = row.getValue().asInt();
                    int chips = Integer.parseInt(row.getKey());
                    assertEquals(mebibytes, chips * (mbit % 9 == 0 ? mbit / 9 * 8 : mbit) / 8);
                    Verdict verdict = board.judge(List.of("RIMM1", "RIMM2"), rimm(mebibytes, mbit, 800));
                    assertEquals(Weight.PASSES, weight(verdict, "rimm-chip-arithmetic"), row.toString());
                    Verdict wrong = board.judge(List.of("RIMM1", "RIMM2"), rimm(mebibytes - 4, mbit, 800));
                    assertEquals(Weight.BLOCKS, weight(wrong, "rimm-chip-arithmetic"), row.toString());
                    rows++;
                }
            }
        }
        assertEquals(20, rows);
    }

    private static Weight weight(Verdict verdict, String rule) {
        return verdict.reasons().stream().filter(reason -> reason.rule().equals(rule)).findFirst().orElseThrow()
                .weight();
    }
}
