package slotledger.rules.internal.fill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.verdict.Weight;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.spi.MemoryRule;

/** Outside check: PowerEdge SC1425 manual p.49, banks of two sockets; one module alone goes into DIMM1_A. */
class BanksFilledTest {

    private static final MemoryRule RULE = new BanksFilled();
    private static final String SC1425 = """
            form server
            channel A 1 1A 2A 3A
            channel B 1 1B 2B 3B
            takes DDR2 DIMM registered ecc=REQUIRED
            bank 1 1A 1B
            bank 2 2A 2B
            bank 3 3A 3B
            row 1 1A
            """;
    private static final Board BOARD = BoardText.board("SC1425", SC1425 + "fill required");
    private static final String GIB = ": 1GB DDR2 DIMM registered";

    @Test
    void aBankIsWholeOrEmpty() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1A 1B" + GIB));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1A 1B 2A 2B 3A 3B" + GIB));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1A 1B 2A" + GIB));
        assertEquals("Bank 2 has 1 of 2 sockets filled; it is whole or empty.",
                Judged.sentence(RULE, BOARD, "1A 1B 2A" + GIB));
    }

    @Test
    void theFirstBanksAreFilledFirst() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "2A 2B" + GIB));
        assertEquals("Bank 2 is filled, bank 1 before it is not.", Judged.sentence(RULE, BOARD, "2A 2B" + GIB));
        assertEquals(Weight.LOWERS, Judged.by(RULE, BoardText.board("SC1425", SC1425), "2A 2B" + GIB));
    }

    @Test
    void theModulesOfABankAreOfOneCapacity() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1A" + GIB + "; 1B: 2GB DDR2 DIMM registered"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1A 1B" + GIB + "; 2A 2B: 2GB DDR2 DIMM registered"));
    }

    @Test
    void aPrintedRowIsAllowedThoughItBreaksABank() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "1A" + GIB));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "1B" + GIB));
    }

    @Test
    void familiesWithLawsOfTheirOwnAreLeftToThem() {
        Board simms = BoardText.board("none", "channel A 1 S1 S2\ntakes EDO SIMM_72\nbank 0 S1 S2");
        assertEquals(0, Judged.verdict(RULE, Judged.setup(simms, "S1: 16MB EDO SIMM_72")).reasons().size());
    }

    @Test
    void theBanksOfAnAbsentProcessorDoNotComeFirst() {
        Board board = BoardText.board("two processors", """
                channel A 1 P1A P1B
                channel B 2 P2A P2B
                takes DDR2 DIMM registered
                bank 0 P2A P2B
                bank 1 P1A P1B
                fill required
                """);
        Setup one = new Setup(board, 1, Optional.empty(), Optional.empty(), Redundancy.NONE,
                ModuleText.population(board, "P1A P1B" + GIB));
        assertEquals(Weight.PASSES, Judged.verdict(RULE, one).weight());
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "P1A P1B" + GIB));
    }
}
