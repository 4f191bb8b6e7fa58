package slotledger.rules.internal.sdr;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; the notches of a 168-pin DIMM (JESD21-C, from memory). */
class RegisteredWhereSaidTest {

    private static final MemoryRule RULE = new RegisteredWhereSaid();
    private static final Board SILENT = BoardText.board("from memory", "channel A 1 1 2\ntakes SDR DIMM");

    @Test
    void aRegisteredModuleIsUnknownWhereNoDocumentSaysSo() {
        assertEquals(Weight.UNKNOWN, Judged.by(RULE, SILENT, "1: 256MB SDR-100 DIMM registered ECC"));
        assertEquals("The 256 MB module in slot 1 is registered; no document says that the board works with such "
                + "modules.", Judged.sentence(RULE, SILENT, "1: 256MB SDR-100 DIMM registered ECC"));
    }

    @Test
    void anUnbufferedOneIsNoMatter() {
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(SILENT, "1: 256MB SDR-100 DIMM unbuffered; 2: 256MB SDR-100 DIMM")).reasons());
    }

    @Test
    void aDocumentThatNamesBufferingsIsLeftToThem() {
        Board board = BoardText.board("from memory", "channel A 1 1\ntakes SDR DIMM unbuffered registered");
        assertEquals(List.of(), Judged.verdict(RULE,
                Judged.setup(board, "1: 256MB SDR-100 DIMM registered ECC")).reasons());
    }
}
