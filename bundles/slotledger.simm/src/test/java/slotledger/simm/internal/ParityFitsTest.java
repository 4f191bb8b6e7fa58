package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.model.board.Board;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; common practice. */
class ParityFitsTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new ParityFits();

    @Override
    protected MemoryRule rule() {
        return new ParityFits();
    }

    private static Board board(String ecc) {
        return BoardText.board("none", "channel A 1 A1 A2\ntakes FPM SIMM_72 ecc=" + ecc);
    }

    @ParameterizedTest
    @CsvSource({
        "IGNORED, parity, PASSES", "IGNORED, non-ECC, PASSES", "IGNORED, '', PASSES",
        "USED, parity, PASSES", "USED, non-ECC, CAUTION", "USED, '', UNKNOWN", "USED, ECC, UNKNOWN",
        "REQUIRED, parity, PASSES", "REQUIRED, non-ECC, BLOCKS", "REQUIRED, '', UNKNOWN",
        "REFUSED, parity, BLOCKS", "REFUSED, non-ECC, PASSES", "REFUSED, '', UNKNOWN",
        "UNKNOWN, parity, PASSES", "UNKNOWN, non-ECC, UNKNOWN", "UNKNOWN, '', UNKNOWN"
    })
    void theBoardDecides(String ecc, String parity, Weight weight) {
        assertEquals(weight, Judged.by(RULE, board(ecc), "A1: 16MB FPM SIMM_72 " + parity));
    }

    @Test
    void oneModuleWithoutParityNeedsItTurnedOff() {
        assertEquals("The 16 MB module in slot A2 has no parity; the board checks parity and starts without it only "
                + "when that is turned off.",
                Judged.sentence(RULE, board("USED"), "A1: 16MB FPM SIMM_72 parity; A2: 16MB FPM SIMM_72 non-ECC"));
    }

    @Test
    void theMissingFactIsOfTheModuleOrOfTheBoard() {
        assertEquals(Optional.of(MissingFact.ERROR_CHECK), Judged.verdict(RULE,
                Judged.setup(board("USED"), "A1: 16MB FPM SIMM_72")).reasons().get(0).missing());
        assertEquals(Optional.of(MissingFact.BOARD_FACT), Judged.verdict(RULE,
                Judged.setup(board("UNKNOWN"), "A1: 16MB FPM SIMM_72 non-ECC")).reasons().get(0).missing());
    }
}
