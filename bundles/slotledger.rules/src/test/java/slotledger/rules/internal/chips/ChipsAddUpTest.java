package slotledger.rules.internal.chips;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel DH61SA Table 3, whose row of 2 GB with one rank of x16 chips of 2 Gbit is a misprint. */
class ChipsAddUpTest {

    private static final MemoryRule RULE = new ChipsAddUp();
    private static final String SOURCE = "DH61SA";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1
            takes DDR3 DIMM
            """);

    @Test
    void figuresThatFitPass() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 8GB DDR3 DIMM unbuffered 2Rx8 4096Mbit"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 1GB DDR3 DIMM unbuffered 1Rx16 2048Mbit"));
    }

    @Test
    void theMisprintedRowBlocksWithItsNumbers() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 2GB DDR3 DIMM unbuffered 1Rx16 2048Mbit"));
        assertEquals(
                "The 2 GB module in slot A1 can't exist: 1 x 4 chips (x16) of 2 Gbit make 1 GB, not 2 GB.",
                Judged.sentence(RULE, BOARD, "A1: 2GB DDR3 DIMM unbuffered 1Rx16 2048Mbit"));
    }

    @Test
    void unknownFiguresSayNothing() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 2GB DDR3 DIMM 1Rx16"));
    }

    /** 100-pin DIMMs, 72-pin SO-DIMMs and 72-pin SIMMs are 32 bits wide, 30-pin SIMMs 8 bits (trade practice). */
    @Test
    void theFamilySaysHowWideARankIs() {
        Board printer = BoardText.board("none", "channel A 1 A1\ntakes SDR DIMM_100");
        assertEquals(Weight.PASSES, Judged.by(RULE, printer, "A1: 64MB SDR DIMM_100 2Rx16 128Mbit"));
        assertEquals("The 128 MB module in slot A1 can't exist: 2 x 2 chips (x16) of 128 Mbit make 64 MB, not 128 MB.",
                Judged.sentence(RULE, printer, "A1: 128MB SDR DIMM_100 2Rx16 128Mbit"));
        Board simms = BoardText.board("none", "channel A 1 A1\ntakes EDO SIMM_72");
        assertEquals(Weight.PASSES, Judged.by(RULE, simms, "A1: 16MB EDO SIMM_72 1Rx4 16Mbit"));
        assertEquals(Weight.PASSES, Judged.by(RULE, simms, "A1: 4MB FPM SIMM_30 1Rx1 4Mbit"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, simms, "A1: 32MB EDO SIMM_72 1Rx4 16Mbit"));
    }

    @Test
    void aKnownStackIsPartOfTheArithmetic() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 128GB DDR4 DIMM registered 2Rx4 16384Mbit stack=2"));
        assertEquals("The 64 GB module in slot A1 can't exist: 2 x 16 chips (x4) of 2 dies of 16 Gbit make 128 GB, "
                        + "not 64 GB.",
                Judged.sentence(RULE, BOARD, "A1: 64GB DDR4 DIMM registered 2Rx4 16384Mbit stack=2"));
    }

    /** A CAMM2 has one channel or two; the chips of a RIMM are addressed alone. */
    @Test
    void whereRanksTellNothingItSaysNothing() {
        Board camm = BoardText.board("none", "channel A 1 A1\ntakes DDR5 CAMM2");
        assertEquals(0,
                Judged.verdict(RULE, Judged.setup(camm, "A1: 32GB DDR5 CAMM2 1Rx8 16384Mbit")).reasons().size());
    }

    @Test
    void stackedChipsHoldMore() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 64GB DDR4 DIMM registered 2Rx4 8192Mbit"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 48GB DDR4 DIMM registered 2Rx4 8192Mbit"));
    }

    @Test
    void aKnownStackMultipliesExactly() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 256GB DDR5 DIMM registered 2Rx4 16384Mbit stack=4"));
        assertEquals(
                "The 256 GB module in slot A1 can't exist: 2 x 16 chips (x4) of 2 dies of 16 Gbit make 128 GB, not "
                        + "256 GB.",
                Judged.sentence(RULE, BOARD, "A1: 256GB DDR5 DIMM registered 2Rx4 16384Mbit stack=2"));
    }

    /** A memory text of the time: 1M x 36 is 4 MB; 8 chips of 1M x 4 make the 32 data bits of a 72-pin SIMM. */
    @Test
    void aRankOfA72PinSimmHas32DataBits() {
        Board simm = BoardText.board("SIMM", "channel A 1 A1\ntakes FPM SIMM_72");
        assertEquals(Weight.PASSES, Judged.by(RULE, simm, "A1: 4MB FPM SIMM_72 1Rx4 4Mbit"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, simm, "A1: 8MB FPM SIMM_72 1Rx4 4Mbit"));
    }

    /** JESD318: a CAMM2 carries 64 or 128 data bits, so that its ranks don't tell its chips. */
    @Test
    void compressionAttachedModulesAreLeftAlone() {
        Board camm = BoardText.board("CAMM2", "channel A 1 spans=2 A1\ntakes DDR5 CAMM2");
        assertEquals(Weight.PASSES, Judged.by(RULE, camm, "A1: 64GB DDR5 CAMM2 unbuffered 2Rx8 16384Mbit"));
    }
}
