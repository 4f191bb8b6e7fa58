package slotledger.rules.internal.ddr3;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; largest chips of DDR3 controllers from memory; capacities by JESD21-C chip arithmetic. */
class Ddr3ChipsTest {

    private static final MemoryRule RULE = new Ddr3Chips();
    private static final Board SILENT = BoardText.board("none", "channel A 1 1 2\ntakes DDR3 DIMM unbuffered");

    @Test
    void anEightChipModuleOfEightGigabytesIsUnknown() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, SILENT, "1: 8GB DDR3-1600 DIMM unbuffered non-ECC 1Rx8"));
        assertEquals(Weight.PASSES, Judged.by(RULE, SILENT, "1: 8GB DDR3-1600 DIMM unbuffered non-ECC 2Rx8"));
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(SILENT, "1: 8GB DDR3-1600 DIMM unbuffered non-ECC")).reasons());
    }

    @Test
    void sixteenGigabytesAlwaysHaveEightGigabitChips() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, SILENT, "1: 16GB DDR3-1600 DIMM unbuffered non-ECC"));
        assertEquals("The 16 GB module in slot 1 has chips of more than 4 Gbit, if it has no more than 16; every "
                        + "board of the family knows chips up to 4 Gbit, and no document says what this one knows.",
                Judged.sentence(RULE, SILENT, "1: 16GB DDR3-1600 DIMM unbuffered non-ECC"));
    }

    @Test
    void aNamedLargestChipAndRegisteredModulesAreNoMatter() {
        Board board = BoardText.board("none", "channel A 1 1\ntakes DDR3 DIMM unbuffered chip=..4096");
        assertEquals(List.of(), Judged.verdict(RULE, Judged.setup(board, "1: 16GB DDR3 DIMM unbuffered")).reasons());
        Board server = BoardText.board("none", "channel A 1 1\ntakes DDR3 DIMM");
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(server, "1: 32GB DDR3 DIMM registered ECC")).reasons());
    }
}
