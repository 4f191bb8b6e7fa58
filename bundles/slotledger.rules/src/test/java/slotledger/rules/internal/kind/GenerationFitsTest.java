package slotledger.rules.internal.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel D845GBV memory page (DDR) and JEDEC pin counts, from memory. */
class GenerationFitsTest {

    private static final MemoryRule RULE = new GenerationFits();
    private static final String SOURCE = "D845GBV";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            takes DDR3 DIMM
            """);

    @Test
    void aModuleOfTheBoardsGenerationPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 4GB DDR3 DIMM"));
    }

    @Test
    void anotherGenerationBlocksAndTheSamePinsAreSaid() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 4GB DDR2 DIMM"));
        assertEquals(
                "The 4 GB module in slot A1 is DDR2; the slot takes DDR3: the "
                        + "same 240 pins, but the notch is elsewhere.",
                Judged.sentence(RULE, BOARD, "A1: 4GB DDR2 DIMM"));
    }

    @Test
    void anotherNumberOfPinsIsNotCalledTheSame() {
        assertEquals(
                "The 8 GB module in slot A1 is DDR4; the slot takes DDR3.",
                Judged.sentence(RULE, BOARD, "A1: 8GB DDR4 DIMM"));
    }

    @Test
    void anUnknownGenerationIsUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, BOARD, "A1: 4GB DIMM"));
    }

    @Test
    void oneWrongAmongRightOnesBlocks() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "A1: 4GB DDR3 DIMM; A2: 4GB DDR4 DIMM"));
    }

    @Test
    void fpmAndEdoAreToldApartByTheirOwnLaw() {
        Board simm = BoardText.board("common practice", """
                channel A 1 A1
                takes FPM SIMM_72
                """);
        assertEquals(0, Judged.verdict(RULE, Judged.setup(simm, "A1: 16MB EDO SIMM_72")).reasons().size());
    }
}
