package slotledger.rules.internal.ddr;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/**
 * Outside check: HP guides (705 G1, 280 G4): "DIMMs with x4 SDRAM are not supported"; techsupportforum: 16 chips of
 * 32M x 8 are two ranks of 256 MB, 16 chips of 64M x 4 are one rank.
 */
class HighDensityTest {

    private static final MemoryRule RULE = new HighDensity();
    private static final String SOURCE = "HP 705 G1 guide";
    private static final Board SILENT = BoardText.board(SOURCE, "channel A 1 1\ntakes DDR DIMM unbuffered");
    private static final Board X8_X16 = BoardText.board(SOURCE,
            "channel A 1 1\ntakes DDR DIMM unbuffered widths=x8,x16");

    @Test
    void x4ChipsWithoutARegisterAreHighDensity() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, X8_X16, "1: 1GB DDR-400 DIMM unbuffered 1Rx4"));
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, SILENT, "1: 1GB DDR-400 DIMM unbuffered 1Rx4"));
        assertEquals(Weight.PASSES, Judged.by(RULE, SILENT, "1: 1GB DDR-400 DIMM unbuffered 2Rx8"));
    }

    @Test
    void theWidthFollowsFromRanksAndChips() {
        assertEquals(Weight.PASSES, Judged.by(RULE, X8_X16, "1: 512MB DDR-400 DIMM unbuffered 2Rx8 256Mbit"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, X8_X16, "1: 512MB DDR-400 DIMM unbuffered 1Rx4 256Mbit"));
        assertEquals(Weight.PASSES, Judged.by(RULE, X8_X16, "1: 1GB DDR-400 DIMM unbuffered 2Rx16 1024Mbit"));
    }

    @Test
    void anUnknownWidthIsACautionFromTheSizeOnAtWhichTheyWereMade() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, SILENT, "1: 1GB DDR-400 DIMM unbuffered non-ECC"));
        assertEquals(Weight.CAUTION, Judged.by(RULE, SILENT, "1: 512MB DDR-400 DIMM unbuffered non-ECC"));
        assertEquals(Weight.PASSES, Judged.by(RULE, SILENT, "1: 256MB DDR-400 DIMM unbuffered non-ECC"));
    }

    @Test
    void registeredModulesAndSmallOnesAreNoMatter() {
        Board server = BoardText.board(SOURCE, "channel A 1 1\ntakes DDR2 DIMM registered");
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(server, "1: 1GB DDR2 DIMM registered ECC 1Rx4")).reasons());
        Board notebook = BoardText.board(SOURCE, "channel A 1 1\ntakes DDR2 SO-DIMM");
        assertEquals(List.of(), Judged.verdict(RULE, Judged.setup(notebook, "1: 2GB DDR2 SO-DIMM")).reasons());
    }

    @Test
    void aBoardThatNamesX4TakesThem() {
        Board board = BoardText.board(SOURCE, "channel A 1 1\ntakes DDR DIMM unbuffered widths=x4,x8");
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(board, "1: 1GB DDR DIMM unbuffered 1Rx4")).reasons());
    }
}
