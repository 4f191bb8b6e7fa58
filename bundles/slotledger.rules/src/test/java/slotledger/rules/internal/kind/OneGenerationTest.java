package slotledger.rules.internal.kind;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel support article 000088926 (never mix two generations). */
class OneGenerationTest {

    private static final MemoryRule RULE = new OneGeneration();
    private static final String SOURCE = "000088926";
    private static final Board BOARD = BoardText.board(SOURCE, """
            channel A 1 DDR2_1 DDR3_1
            channel B 1 DDR2_2 DDR3_2
            takes DDR2 DIMM only=DDR2_1,DDR2_2
            takes DDR3 DIMM only=DDR3_1,DDR3_2
            """);

    @Test
    void eitherGenerationAloneIsFine() {
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "DDR2_1 DDR2_2: 2GB DDR2 DIMM"));
        assertEquals(Weight.PASSES, Judged.by(RULE, BOARD, "DDR3_1 DDR3_2: 2GB DDR3 DIMM"));
    }

    @Test
    void bothAtOnceBlock() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, BOARD, "DDR2_1: 2GB DDR2 DIMM; DDR3_1: 2GB DDR3 DIMM"));
    }

    /** Boards of 1997 with SIMM and DIMM sockets differ in this (common practice, no source). */
    @Test
    void simmsBesideDimmsAreUnknownWhicheverSocketComesFirst() {
        for (String channel : List.of("channel A 1 SIMM DIMM", "channel A 1 DIMM SIMM")) {
            Board board = BoardText.board("practice", channel
                    + "\ntakes EDO SIMM_72 only=SIMM\ntakes SDR DIMM only=DIMM");
            assertEquals(Weight.UNKNOWN, Judged.by(RULE, board, "SIMM: 16MB EDO SIMM_72; DIMM: 64MB SDR DIMM"));
        }
        Board pageMode = BoardText.board("practice", "channel A 1 S1 S2\ntakes EDO SIMM_72 only=S1\n"
                + "takes FPM SIMM_72 only=S2");
        assertEquals(Weight.PASSES, Judged.by(RULE, pageMode, "S1: 16MB EDO SIMM_72; S2: 16MB FPM SIMM_72"));
    }
}
