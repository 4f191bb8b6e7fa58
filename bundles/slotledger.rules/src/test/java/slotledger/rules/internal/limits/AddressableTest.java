package slotledger.rules.internal.limits;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** No outside check: the limit of a chipset is a fact of the board. A 3 GB chipset is an example from memory. */
class AddressableTest {

    private static final MemoryRule RULE = new Addressable();
    private static final Board BOARD = BoardText.board("none", """
            channel A 1 A1
            channel B 1 B1
            takes DDR2 SO-DIMM
            addressable 3GB
            """);

    @Test
    void whatIsAboveIsLost() {
        Verdict verdict = Judged.verdict(RULE, Judged.setup(BOARD, "A1 B1: 2GB DDR2 SO-DIMM"));
        assertEquals(Weight.LOWERS, verdict.weight());
        assertEquals("4 GB are installed; the chipset addresses 3 GB, so that 1 GB are not seen.",
                verdict.reasons().get(0).sentence());
        assertEquals(Capacity.ofGiB(4), verdict.operation().installed());
        assertEquals(Capacity.ofGiB(3), verdict.operation().addressable());
        assertEquals(Capacity.ofGiB(3), verdict.operation().usable());
    }

    @Test
    void upToTheLimitNothingIsLost() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1: 2GB DDR2 SO-DIMM; B1: 1GB DDR2 SO-DIMM"));
        Board silent = BoardText.board("none", "channel A 1 A1\ntakes DDR2 SO-DIMM");
        assertEquals(0, Judged.verdict(RULE, Judged.setup(silent, "A1: 4GB DDR2 SO-DIMM")).reasons().size());
    }
}
