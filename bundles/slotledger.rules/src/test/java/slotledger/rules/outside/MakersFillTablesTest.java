package slotledger.rules.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;

/** Outside check: the fill tables of seven systems, typed from the makers' manuals named beside them. */
class MakersFillTablesTest {

    private static final String RDIMM = "8GB DDR4-2400 DIMM registered ECC 1Rx8 8192Mbit 1200mV";

    /** PowerEdge T630 Owner's Manual, Table 31, p.95; rates by modules in a channel from the same platform's tables. */
    private static final Board T630 = BoardText.board("PowerEdge T630 Owner's Manual", """
            form server
            channel 0 1 A1 A5 A9
            channel 1 1 A2 A6 A10
            channel 2 1 A3 A7 A11
            channel 3 1 A4 A8 A12
            takes DDR4 DIMM registered load-reduced ecc=REQUIRED
            row 1 A1 2400
            row 1 A1 A2 2400
            row 1 A1 A2 A3 A4 2400
            row 1 A1 A2 A3 A4 A5 A6 2400
            row 1 A1 A2 A3 A4 A5 A6 A7 A8 A9 A10 A11 A12
            fill required
            limit dpc=1 registered 2400
            limit dpc=2 registered 2400
            limit dpc=3 registered 1866
            limit dpc=1 load-reduced 2400
            limit dpc=2 load-reduced 2400
            limit dpc=3 load-reduced 2133
            """);

    /** PowerEdge R740xd2 Installation and Service Manual, Table 10, p.100; channels as printed for the same board. */
    private static final Board R740XD2 = BoardText.board("PowerEdge R740xd2 manual", """
            form server
            channel 0 1 A1 A7
            channel 1 1 A2 A8
            channel 2 1 A3
            channel 3 1 A4 A9
            channel 4 1 A5 A10
            channel 5 1 A6
            channel 6 2 B1
            channel 7 2 B2
            channel 8 2 B3
            channel 9 2 B4
            channel 10 2 B5
            channel 11 2 B6
            takes DDR4 DIMM registered ecc=REQUIRED
            order A1 A2 A3 A4 A5 A6 A7 A8 A9 A10
            row 1 A1 A2 A4 A5
            row 1 A1 A2 A4 A5 A7 A8 A9 A10
            row 2 A1 A2 A4 A5 B1 B2 B4 B5
            fill required
            """);

    /** System x3650 M4 BD Installation and Service Guide, Tables 6 to 8. */
    private static final Board X3650 = BoardText.board("System x3650 M4 BD guide", """
            form server
            channel 1 1 8 7
            channel 2 1 6 5
            channel 3 1 1 2
            channel 4 1 3 4
            channel 5 2 16 15
            channel 6 2 14 13
            channel 7 2 9 10
            channel 8 2 11 12
            takes DDR3 DIMM registered ecc=REQUIRED
            order 8 16 6 14 1 9 3 11 7 15 5 13 2 10 4 12
            fill required
            """);

    private static Verdict verdict(Board board, int processors, List<String> slots, String module) {
        return Judged.byAll(new Setup(board, processors, Optional.empty(), Optional.empty(), Redundancy.NONE,
                ModuleText.population(board, String.join(" ", slots) + ": " + module)));
    }

    private static void assertSequence(Board board, int processors, String module, String sequence) {
        List<String> order = List.of(sequence.split(" "));
        for (int count = 1; count <= order.size(); count++) {
            List<String> slots = order.subList(0, count);
            assertFills(verdict(board, processors, slots, module), true, slots);
            if (count < order.size()) {
                List<String> wrong = new ArrayList<>(order.subList(0, count - 1));
                wrong.add(order.get(order.size() - 1));
                assertFills(verdict(board, processors, wrong, module), false, wrong);
            }
        }
    }

    /** Whether the rules of filling accept it; the ones of speed and balance may still say more. */
    private static void assertFills(Verdict verdict, boolean accepted, List<String> slots) {
        boolean objected = verdict.reasons().stream()
                .filter(reason -> reason.weight() == Weight.BLOCKS || reason.weight() == Weight.LOWERS)
                .anyMatch(reason -> reason.rule().startsWith("fill-"));
        assertEquals(accepted, !objected, () -> slots + ": " + verdict.reasons());
    }

    @Test
    void thePowerEdgeT630TakesItsPrintedRowsAtTheirRates() {
        List<String> all = List.of("A1 A2 A3 A4 A5 A6 A7 A8 A9 A10 A11 A12".split(" "));
        for (int count : new int[] {1, 2, 4, 6}) {
            Verdict verdict = verdict(T630, 1, all.subList(0, count), RDIMM);
            assertNotEquals(Weight.BLOCKS, verdict.weight(), () -> verdict.reasons().toString());
            assertEquals(Optional.of(Rate.of(2400)), verdict.operation().rate());
        }
        Verdict twelve = verdict(T630, 1, all, RDIMM);
        assertEquals(Weight.PASSES, twelve.weight(), () -> twelve.reasons().toString());
        assertEquals(Optional.of(Rate.of(1866)), twelve.operation().rate());
        assertEquals("The board runs no faster with 3 registered modules in channel 0.", twelve.operation().rateWhy());
        assertEquals("quad channel", twelve.operation().mode().toString());
        assertTrue(twelve.operation().ecc());
    }

    @Test
    void theT630RunsTwelveLoadReducedModulesAt2133() {
        List<String> all = List.of("A1 A2 A3 A4 A5 A6 A7 A8 A9 A10 A11 A12".split(" "));
        Verdict verdict = verdict(T630, 1, all, "32GB DDR4-2400 DIMM load-reduced ECC 4Rx4 8192Mbit 1200mV");
        assertEquals(Optional.of(Rate.of(2133)), verdict.operation().rate());
    }

    @Test
    void theT630RefusesWhatItsTableDoesNotPrint() {
        assertEquals(Weight.BLOCKS, verdict(T630, 1, List.of("A1", "A5"), RDIMM).weight());
        assertEquals(Weight.BLOCKS, verdict(T630, 1, List.of("A1", "A2", "A5", "A6"), RDIMM).weight());
    }

    @Test
    void thePrintedExceptionsOfTheR740xd2OverrideTheNumberOrder() {
        for (String row : List.of("A1", "A1 A2", "A1 A2 A3", "A1 A2 A4 A5", "A1 A2 A3 A4 A5", "A1 A2 A3 A4 A5 A6",
                "A1 A2 A4 A5 A7 A8 A9 A10", "A1 A2 A3 A4 A5 A6 A7 A8 A9 A10")) {
            List<String> slots = List.of(row.split(" "));
            assertFills(verdict(R740XD2, 1, slots, RDIMM), true, slots);
        }
        List<String> both = List.of("A1 A2 A4 A5 B1 B2 B4 B5".split(" "));
        assertEquals(Weight.LOWERS, verdict(R740XD2, 2, both, RDIMM).weight());
        assertFills(verdict(R740XD2, 2, both, RDIMM), true, both);
        assertEquals(Weight.BLOCKS, verdict(R740XD2, 1, List.of("A1", "A2", "A3", "A4"), RDIMM).weight());
        assertEquals(Weight.BLOCKS, verdict(R740XD2, 1, List.of("A2"), RDIMM).weight());
    }

    @Test
    void theX3650M4BdIsFilledInThePrintedSequence() {
        String module = "8GB DDR3-1600 DIMM registered ECC";
        assertSequence(X3650, 1, module, "8 6 1 3 7 5 2 4");
        assertSequence(X3650, 2, module, "8 16 6 14 1 9 3 11 7 15 5 13 2 10 4 12");
    }

    /** HP Hardware Reference Guide 8FJ83EA, "Populating DIMM sockets". */
    @Test
    void theHpDesktopIsFilled4231() {
        Board board = BoardText.board("HP Hardware Reference Guide 8FJ83EA", """
                channel A 1 3 1
                channel B 1 4 2
                takes DDR4 DIMM unbuffered ecc=REFUSED widths=x8,x16
                order 4 2 3 1
                """);
        assertSequence(board, 1, "8GB DDR4-2666 DIMM unbuffered non-ECC", "4 2 3 1");
        Verdict x4 = verdict(board, 1, List.of("4"), "8GB DDR4-2666 DIMM unbuffered non-ECC 1Rx4");
        assertEquals(Weight.BLOCKS, x4.weight());
        assertEquals("chip-width", x4.reasons().get(0).rule());
    }

    /** ASUS PRO Q670M-C and TUF GAMING A620M-PLUS manuals, "Recommended memory configurations". */
    @Test
    void asusBoardsAreFilledFromA2AndB2() {
        Board board = BoardText.board("ASUS PRO Q670M-C manual", """
                channel A 1 A2 A1
                channel B 1 B2 B1
                takes DDR5 DIMM unbuffered
                row 1 A2
                row 1 A2 B2
                row 1 A1 A2 B1 B2
                """);
        String module = "16GB DDR5-4800 DIMM unbuffered non-ECC";
        Verdict pair = verdict(board, 1, List.of("A2", "B2"), module);
        assertEquals(Weight.PASSES, pair.weight(), () -> pair.reasons().toString());
        assertEquals("dual channel", pair.operation().mode().toString());
        assertEquals(Weight.PASSES, verdict(board, 1, List.of("A1", "A2", "B1", "B2"), module).weight());
        assertFills(verdict(board, 1, List.of("A2"), module), true, List.of("A2"));
        assertEquals(Weight.LOWERS, verdict(board, 1, List.of("A1", "B1"), module).weight());
    }

    /** System x3500 M5 Installation and Service Guide, p.74: rates by modules in a channel. */
    @Test
    void theX3500M5RunsAtThePrintedRates() {
        Board board = BoardText.board("System x3500 M5 guide", """
                form server
                channel 1 1 1 2 3
                takes DDR4 DIMM registered load-reduced ecc=REQUIRED
                limit dpc=1 registered 2133
                limit dpc=2 registered 1866
                limit dpc=3 registered 1600
                limit dpc=1 load-reduced 2133
                limit dpc=2 load-reduced 2133
                limit dpc=3 load-reduced 1600
                """);
        int[] registered = {2133, 1866, 1600};
        int[] loadReduced = {2133, 2133, 1600};
        for (int count = 1; count <= 3; count++) {
            List<String> slots = List.of("1", "2", "3").subList(0, count);
            assertEquals(Optional.of(Rate.of(registered[count - 1])),
                    verdict(board, 1, slots, "16GB DDR4-2133 DIMM registered ECC").operation().rate());
            assertEquals(Optional.of(Rate.of(loadReduced[count - 1])),
                    verdict(board, 1, slots, "32GB DDR4-2133 DIMM load-reduced ECC").operation().rate());
        }
    }

    /** Lenovo ThinkServer user guide (machine types 3836 and others), Table 7. */
    @Test
    void theThinkServerSkipsItsDeadConnectors() {
        Board board = BoardText.board("Lenovo ThinkServer user guide", """
                form server
                channel 1 1 !1 3 2
                channel 2 1 !4 6 5
                channel 3 1 8 7
                channel 4 2 !9 11 10
                channel 5 2 !12 14 13
                channel 6 2 16 15
                takes DDR3 DIMM registered ecc=REQUIRED
                order 3 11 6 14 8 16 2 10 5 13 7 15
                fill required
                """);
        String module = "4GB DDR3-1333 DIMM registered ECC";
        assertSequence(board, 1, module, "3 6 8 2 5 7");
        assertSequence(board, 2, module, "3 11 6 14 8 16 2 10 5 13 7 15");
        Verdict dead = verdict(board, 1, List.of("1"), module);
        assertEquals(Weight.BLOCKS, dead.weight());
        assertTrue(dead.reasons().stream().anyMatch(reason -> reason.rule().equals("dead-connector")));
    }

    /** System x3250 M5 Installation and Service Guide, Table 8: pairs 1+3, then 2+4. */
    @Test
    void theX3250M5IsFilledInPairs() {
        Board board = BoardText.board("System x3250 M5 guide", """
                form server
                channel 1 1 1 2
                channel 2 1 3 4
                takes DDR3 DIMM unbuffered ecc=REQUIRED
                order 1 3 2 4
                fill required sets=2
                """);
        String module = "8GB DDR3-1600 DIMM unbuffered ECC";
        assertEquals(Weight.PASSES, verdict(board, 1, List.of("1", "3"), module).weight());
        assertEquals(Weight.PASSES, verdict(board, 1, List.of("1", "2", "3", "4"), module).weight());
        assertEquals(Weight.BLOCKS, verdict(board, 1, List.of("1"), module).weight());
        assertEquals(Weight.BLOCKS, verdict(board, 1, List.of("2", "4"), module).weight());
    }
}
