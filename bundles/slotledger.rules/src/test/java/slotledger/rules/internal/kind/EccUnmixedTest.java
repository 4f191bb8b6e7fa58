package slotledger.rules.internal.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel D850GB manual 1.5.3: ECC only if every module is ECC. */
class EccUnmixedTest {

    private static final MemoryRule RULE = new EccUnmixed();
    private static final String SOURCE = "D850GB";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 A1 A2
            takes DDR3 DIMM ecc=USED
            """);

    @Test
    void onlyEccModulesAreChecked() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "A1 A2: 4GB DDR3 DIMM ECC"));
    }

    @Test
    void oneOtherModuleTurnsEccOff() {
        assertEquals(Weight.LOWERS, Judged.by(RULE, BOARD, "A1: 4GB DDR3 DIMM ECC; A2: 4GB DDR3 DIMM non-ECC"));
    }

    @Test
    void anUnknownModuleIsACaution() {
        assertEquals(Weight.CAUTION, Judged.by(RULE, BOARD, "A1: 4GB DDR3 DIMM ECC; A2: 4GB DDR3 DIMM"));
    }
}
