package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: the Macintosh II text, "Bank A must always be filled". */
class BanksInOrderTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new BanksInOrder();

    @Override
    protected MemoryRule rule() {
        return new BanksInOrder();
    }

    private static Board threeBanks(String more) {
        return BoardText.board("none", """
                channel A 1 A1 A2 B1 B2 C1 C2
                takes FPM SIMM_30
                bank A A1 A2
                bank B B1 B2
                bank C C1 C2
                """ + more);
    }

    @Test
    void theFirstBankIsAlwaysFilled() {
        assertEquals(Weight.PASSES, Judged.by(RULE, threeBanks(""), "A1 A2 B1 B2: 1MB FPM SIMM_30"));
        assertEquals("Bank A is empty, but bank B is filled: the first bank must be filled.",
                Judged.sentence(RULE, threeBanks(""), "B1 B2: 1MB FPM SIMM_30"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, threeBanks(""), "B1 B2: 1MB FPM SIMM_30"));
    }

    @Test
    void aGapBehindItIsACautionUnlessTheDocumentSaysMust() {
        String gap = "A1 A2 C1 C2: 1MB FPM SIMM_30";
        assertEquals(Weight.CAUTION, Judged.by(RULE, threeBanks(""), gap));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, threeBanks("fill required"), gap));
        assertEquals("Bank C is filled before bank B.", Judged.sentence(RULE, threeBanks(""), gap));
    }

    @Test
    void solderedMemoryTakesThePlaceOfTheFirstBank() {
        Board board = BoardText.board("none", """
                channel A 1 *S=4MB_FPM A1 A2 B1 B2
                takes FPM SIMM_30
                bank A A1 A2
                bank B B1 B2
                """);
        assertEquals(Weight.CAUTION, Judged.by(RULE, board, "B1 B2: 1MB FPM SIMM_30"));
    }
}
