package slotledger.rules.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.internal.chips.ChipsAddUp;
import slotledger.rules.kit.ModuleFacts;
import slotledger.rules.kit.Stacks;

/** Outside check: rates, orders and mixing bans of DDR4 and DDR5 servers, typed from the makers' manuals named. */
class ServerMemoryTest {

    /** PowerEdge R860 Installation and Service Manual, Table 89: 4800 MT/s, two 8-rank modules a channel 4400 MT/s. */
    private static final Board R860 = BoardText.board("PowerEdge R860 manual", """
            form server
            channel A 1 A1 A9
            channel B 1 A2 A10
            takes DDR5 DIMM registered ecc=REQUIRED
            limit dpc=1 registered 4800
            limit dpc=2 registered 4400
            """);

    /** XC Core XC750xa Installation and Service Manual, Tables 18 and 19, page 57: 3200 MT/s with one or two. */
    private static final Board XC750XA = BoardText.board("XC Core XC750xa manual", """
            form server
            channel A 1 A1 A9
            channel B 1 A5 A13
            takes DDR4 DIMM registered load-reduced ecc=REQUIRED
            limit dpc=1 3200
            limit dpc=2 3200
            """);

    /**
     * PowerEdge T640 Installation and Service Manual: in the order of the numbers, but 4 a processor in 1, 2, 4, 5 and
     * 8 in 1, 2, 4, 5, 7, 8, 10, 11; channels and rates as in its Tables 1 and 2.
     */
    private static final Board T640 = BoardText.board("PowerEdge T640 manual", """
            form server
            channel 0 1 A1 A7
            channel 1 1 A2 A8
            channel 2 1 A3 A9
            channel 3 1 A4 A10
            channel 4 1 A5 A11
            channel 5 1 A6 A12
            channel 6 2 B1 B7
            channel 7 2 B2 B8
            channel 8 2 B3 B9
            channel 9 2 B4 B10
            channel 10 2 B5 B11
            channel 11 2 B6 B12
            takes DDR4 DIMM registered load-reduced ecc=REQUIRED
            order A1 B1 A2 B2 A3 B3 A4 B4 A5 B5 A6 B6 A7 B7 A8 B8 A9 B9 A10 B10 A11 B11 A12 B12
            row 1 A1 A2 A4 A5
            row 1 A1 A2 A4 A5 A7 A8 A10 A11
            row 2 A1 A2 A4 A5 B1 B2 B4 B5
            row 2 A1 A2 A4 A5 A7 A8 A10 A11 B1 B2 B4 B5 B7 B8 B10 B11
            fill required
            limit dpc=1 registered 2933
            limit dpc=2 registered 2933
            limit dpc=1 load-reduced 2933
            limit dpc=2 load-reduced 2666
            """);

    /**
     * Lenovo ThinkSystem SR630 V3 User Guide, independent mode installation rules: eight channels of two slots, slot 0
     * of each first. The labels are ours: channel letter and slot number.
     */
    private static final Board SR630V3 = BoardText.board("ThinkSystem SR630 V3 guide", """
            form server
            channel A 1 A0 A1
            channel B 1 B0 B1
            channel C 1 C0 C1
            channel D 1 D0 D1
            channel E 1 E0 E1
            channel F 1 F0 F1
            channel G 1 G0 G1
            channel H 1 H0 H1
            takes DDR5 DIMM registered ecc=REQUIRED
            """);

    private static Verdict verdict(Board board, int processors, List<String> slots, String module) {
        return Judged.byAll(new Setup(board, processors, Optional.empty(), Optional.empty(), Redundancy.NONE,
                ModuleText.population(board, String.join(" ", slots) + ": " + module)));
    }

    private static void assertRate(int expected, Board board, String slots, String module) {
        Verdict verdict = verdict(board, board.processorSockets(), List.of(slots.split(" ")), module);
        assertNotEquals(Weight.BLOCKS, verdict.weight(), () -> verdict.reasons().toString());
        assertEquals(Optional.of(Rate.of(expected)), verdict.operation().rate());
    }

    private static List<String> numbers(String letter, int... numbers) {
        return Arrays.stream(numbers).mapToObj(number -> letter + number).toList();
    }

    private static List<String> both(int... numbers) {
        List<String> slots = new ArrayList<>(numbers("A", numbers));
        slots.addAll(numbers("B", numbers));
        return slots;
    }

    private static boolean fills(int processors, List<String> slots) {
        Verdict verdict = verdict(T640, processors, slots,
                "16GB DDR4-2933 DIMM registered ECC 2Rx8 8192Mbit 1200mV");
        return verdict.reasons().stream()
                .noneMatch(reason -> reason.weight() == Weight.BLOCKS && reason.rule().startsWith("fill-"));
    }

    @Test
    void theR860RunsEightRankModulesOf256GbAt4800And4400() {
        String module = "256GB DDR5-4800 DIMM registered ECC 2Rx4 16384Mbit stack=4 check=8 1100mV";
        assertEquals(8, Stacks.leastLogicalRanks(ModuleText.module(module)));
        assertRate(4800, R860, "A1 A2", module);
        assertRate(4400, R860, "A1 A2 A9 A10", module);
    }

    @Test
    void theXc750xaRunsOneAndTwoModulesAt3200() {
        for (String module : List.of(
                "8GB DDR4-3200 DIMM registered ECC 1Rx8 8192Mbit", "64GB DDR4-3200 DIMM registered ECC 2Rx4 16384Mbit",
                "128GB DDR4-3200 DIMM load-reduced ECC 4Rx4 16384Mbit")) {
            assertRate(3200, XC750XA, "A1 A5", module);
            assertRate(3200, XC750XA, "A1 A5 A9 A13", module);
        }
    }

    @Test
    void theT640IsFilledByNumberButForFourAndEight() {
        for (int count = 1; count <= 12; count++) {
            List<String> byNumber = numbers("A", IntStream.rangeClosed(1, count).toArray());
            assertEquals(count != 4 && count != 8, fills(1, byNumber), byNumber.toString());
        }
        assertTrue(fills(1, numbers("A", 1, 2, 4, 5)));
        assertTrue(fills(1, numbers("A", 1, 2, 4, 5, 7, 8, 10, 11)));
        assertTrue(fills(2, both(1, 2, 4, 5)));
        assertTrue(fills(2, both(1, 2, 4, 5, 7, 8, 10, 11)));
        assertTrue(fills(2, both(1, 2, 3)));
        assertEquals(false, fills(2, both(1, 2, 3, 4)));
        assertEquals(false, fills(2, both(1, 2, 3, 4, 5, 6, 7, 8)));
    }

    @Test
    void theT640RunsAtThePrintedRates() {
        List<String> six = both(1, 2, 3, 4, 5, 6);
        List<String> twelve = both(1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12);
        String registered = "16GB DDR4-2933 DIMM registered ECC 2Rx8 8192Mbit 1200mV";
        String loadReduced = "64GB DDR4-2933 DIMM load-reduced ECC 4Rx4 8192Mbit 1200mV";
        assertRate(2933, T640, String.join(" ", six), registered);
        assertRate(2933, T640, String.join(" ", twelve), registered);
        assertRate(2933, T640, String.join(" ", six), loadReduced);
        assertRate(2666, T640, String.join(" ", twelve), loadReduced);
    }

    private static void assertBan(String rule, Weight weight, String population) {
        Verdict verdict = Judged.byAll(SR630V3, population);
        assertTrue(verdict.reasons().stream()
                        .anyMatch(reason -> reason.rule().equals(rule) && reason.weight() == weight),
                () -> verdict.reasons().toString());
        assertTrue(verdict.weight().compareTo(Weight.UNKNOWN) >= 0);
    }

    @Test
    void theSr630V3MixesNeitherWidthsNorStacksNorCheckBitsNorChipSizes() {
        String first = "A0 B0 C0 D0: 64GB DDR5-4800 DIMM registered ECC 2Rx4 16384Mbit check=8; E0 F0 G0 H0: ";
        assertEquals(Weight.PASSES, verdict(SR630V3, 1, List.of("A0 B0 C0 D0 E0 F0 G0 H0".split(" ")),
                "64GB DDR5-4800 DIMM registered ECC 2Rx4 16384Mbit check=8").weight());
        assertBan("ddr5-chip-widths", Weight.BLOCKS,
                first + "32GB DDR5-4800 DIMM registered ECC 2Rx8 16384Mbit check=8");
        assertBan("ddr5-stacks", Weight.BLOCKS,
                first + "256GB DDR5-4800 DIMM registered ECC 2Rx4 16384Mbit stack=4 check=8");
        assertBan("ddr5-check-bits", Weight.BLOCKS,
                first + "64GB DDR5-4800 DIMM registered ECC 2Rx4 16384Mbit check=4");
        assertBan("ddr5-chip-sizes", Weight.BLOCKS,
                first + "96GB DDR5-4800 DIMM registered ECC 2Rx4 24576Mbit check=8");
    }

    @Test
    void theSr630V3MixesOneAndTwoRanksOnlyWithSixteenModules() {
        String two = "32GB DDR5-4800 DIMM registered ECC 2Rx8 16384Mbit check=8";
        String one = "16GB DDR5-4800 DIMM registered ECC 1Rx8 16384Mbit check=8";
        assertBan("ddr5-ranks", Weight.UNKNOWN, "A0 B0 C0 D0: " + two + "; E0 F0 G0 H0: " + one);
        Verdict full = Judged.byAll(SR630V3, "A0 B0 C0 D0 E0 F0 G0 H0: " + two + "; A1 B1 C1 D1 E1 F1 G1 H1: " + one);
        assertTrue(full.reasons().stream().anyMatch(reason -> reason.rule().equals("ddr5-ranks")
                && reason.weight() == Weight.CAUTION), () -> full.reasons().toString());
    }

    /** SR630 V3 guide: 16 Gbit in modules of 16 to 64 GB, 24 Gbit in 24 to 96 GB, 32 Gbit in 128 GB 2Rx4. */
    @Test
    void checkBitsChangeNeitherCapacityNorBandwidthOfDdr5Modules() {
        for (String row : List.of("16GB 1Rx8 16384", "32GB 2Rx8 16384", "32GB 1Rx4 16384", "64GB 2Rx4 16384",
                "24GB 1Rx8 24576", "48GB 2Rx8 24576", "48GB 1Rx4 24576", "96GB 2Rx4 24576", "128GB 2Rx4 32768")) {
            String[] cells = row.split(" ");
            for (String check : List.of("", "check=4", "check=8")) {
                String text = "%s DDR5-4800 DIMM registered %s %s".formatted(cells[0], cells[1], check).strip();
                ModuleKind kind = ModuleText.module(text + " " + cells[2] + "Mbit");
                assertEquals(kind.chipSize(), ModuleFacts.chipSize(
                        kind, kind.ranks().orElseThrow(), kind.chipWidth().orElseThrow()), text);
                assertEquals(1, Stacks.most(kind), text);
                assertEquals(Weight.PASSES, Judged.by(new ChipsAddUp(), R860, "A1: " + text));
                Verdict verdict = Judged.byAll(R860, "A1: " + text);
                assertEquals(kind.capacity(), verdict.operation().installed());
                assertEquals("38.4 GB/s", verdict.operation().peak().toString());
            }
        }
    }
}
