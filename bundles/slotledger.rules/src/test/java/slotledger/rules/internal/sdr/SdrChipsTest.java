package slotledger.rules.internal.sdr;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PC Hardware in a Nutshell, 3rd edition, chapter 5.4: 440BX and 815. */
class SdrChipsTest {

    private static final MemoryRule RULE = new SdrChips();
    private static final String SOURCE = "PC Hardware in a Nutshell, 3rd edition";
    private static final Board SILENT = BoardText.board(SOURCE, """
            channel A 1 1 2 3
            takes SDR DIMM unbuffered
            """);

    @Test
    void largerChipsThanEveryBoardKnowsAreUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, SILENT, "1: 256MB SDR-133 DIMM non-ECC 1Rx8"));
        assertEquals(Weight.PASSES, Judged.by(RULE, SILENT, "1: 256MB SDR-133 DIMM non-ECC 2Rx8"));
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, SILENT, "1: 512MB SDR-133 DIMM non-ECC"));
    }

    @Test
    void aModuleThatMayHaveFewLargeChipsIsACaution() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, SILENT, "1: 256MB SDR-133 DIMM non-ECC"));
        assertEquals("The 256 MB module in slot 1 needs 16 chips to have none of more than 128 Mbit; every board of "
                        + "the family knows chips up to 128 Mbit, and no document says what this one knows.",
                Judged.sentence(RULE, SILENT, "1: 256MB SDR-133 DIMM non-ECC"));
        assertEquals(Weight.PASSES, Judged.by(RULE, SILENT, "1: 128MB SDR-133 DIMM non-ECC 1Rx8"));
    }

    @Test
    void aNamedLargestChipDecides() {
        Board board = BoardText.board(SOURCE, "channel A 1 1\ntakes SDR DIMM unbuffered chip=16..128");
        assertEquals(List.of(), Judged.verdict(RULE, Judged.setup(board, "1: 256MB SDR DIMM 1Rx8")).reasons());
    }
}
