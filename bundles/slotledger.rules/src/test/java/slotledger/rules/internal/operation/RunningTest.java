package slotledger.rules.internal.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Operation;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.standard.StandardRules;

/** Outside check: the 16 + 8 GB notebook among the firmware dumps runs 16 GB in dual channel and 8 GB alone. */
class RunningTest {

    @Test
    void twoUnequalModulesOfANotebookRunPartlyTogether() {
        Board board = BoardText.board("T480", "channel A 1 A\nchannel B 1 B\ntakes DDR4 SO-DIMM unbuffered");
        Operation runs = Judged.byAll(board, "A: 16GB DDR4-2400 SO-DIMM; B: 8GB DDR4-2400 SO-DIMM").operation();
        assertEquals("dual channel with 8 GB alone", runs.mode().toString());
        assertEquals(Capacity.ofGiB(24), runs.installed());
        assertEquals("38.4 GB/s", runs.peak().toString());
    }

    @Test
    void solderedMemoryIsOneChannelOfTheArithmetic() {
        Board board = BoardText.board("none",
                "channel A 1 *ONBOARD=4GB_DDR4-2400_soldered\nchannel B 1 S1\ntakes DDR4 SO-DIMM unbuffered");
        assertEquals("dual channel with 4 GB alone",
                Judged.byAll(board, "S1: 8GB DDR4-2400 SO-DIMM non-ECC").operation().mode().toString());
        assertEquals("single channel", Judged.byAll(board, "").operation().mode().toString());
    }

    @Test
    void eccRunsOnlyWhereTheBoardUsesItAndEveryModuleCarriesIt() {
        Board board = BoardText.board("none", "channel A 1 A1 A2\ntakes DDR3 DIMM ecc=USED");
        assertTrue(Judged.byAll(board, "A1 A2: 4GB DDR3 DIMM ECC").operation().ecc());
        assertFalse(Judged.byAll(board, "A1: 4GB DDR3 DIMM ECC; A2: 4GB DDR3 DIMM non-ECC").operation().ecc());
        Board ignores = BoardText.board("none", "channel A 1 A1\ntakes DDR3 DIMM ecc=IGNORED");
        assertFalse(Judged.byAll(ignores, "A1: 4GB DDR3 DIMM ECC").operation().ecc());
    }

    @Test
    void usableMemoryEndsAtWhatTheProcessorAddresses() {
        Board board = BoardText.board("none", "channel A 1 A1 A2\ntakes DDR3 DIMM\nprocessor Small 1333 8GB");
        Setup setup = new Setup(board, 1, Optional.of(board.processors().get(0)), Optional.empty(), Redundancy.NONE,
                ModuleText.population(board, "A1 A2: 8GB DDR3 DIMM"));
        assertEquals(Capacity.ofGiB(8), StandardRules.create().operate(setup).usable());
    }

    @Test
    void theModeCountsTheChannelsOfOneProcessor() {
        Board board = BoardText.board("none", """
                form server
                channel 1 1 A1
                channel 2 1 A2
                channel 3 2 B1
                channel 4 2 B2
                takes DDR4 DIMM registered
                """);
        Operation runs = Judged.byAll(board, "A1 A2 B1 B2: 16GB DDR4-2400 DIMM registered").operation();
        assertEquals("dual channel", runs.mode().toString());
        assertEquals(Capacity.ofGiB(64), runs.mode().together());
        assertEquals("38.4 GB/s", runs.peak().toString());
    }
}
