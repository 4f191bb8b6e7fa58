package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.verdict.Weight;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Intel Desktop Board D850GB manual, section 1.5.3, bank 0 first, each bank whole. */
class BanksWholeTest {

    private static final MemoryRule RULE = new BanksWhole();

    @ParameterizedTest
    @CsvSource({
        "RIMM1 RIMM2, PASSES", "RIMM1 RIMM2 RIMM3 RIMM4, PASSES", "RIMM1, BLOCKS", "RIMM1 RIMM3, BLOCKS",
        "RIMM3 RIMM4, BLOCKS", "RIMM1 RIMM2 RIMM3, BLOCKS", "RIMM2 RIMM3 RIMM4, BLOCKS"
    })
    void banksAreFilledInOrderAndWhole(String slots, Weight weight) {
        String population = slots + ": 128MB RDRAM-800 RIMM_184";
        assertEquals(weight, Judged.by(RULE, D850.GB, population));
        assertEquals(weight, Judged.by(RULE, D850.UNNAMED, population));
    }

    /** HP x4000: matched pairs in banks of four sockets. */
    @ParameterizedTest
    @CsvSource({
        "R1 R2, PASSES", "R1 R2 R3 R4, PASSES", "R1 R2 R3 R4 R5 R6, PASSES", "R1 R2 R3 R4 R5 R6 R7 R8, PASSES",
        "R1, BLOCKS", "R1 R3, BLOCKS", "R1 R2 R3, BLOCKS", "R3 R4, BLOCKS", "R1 R2 R3 R4 R5, BLOCKS"
    })
    void aBankLargerThanASetHoldsWholeSets(String slots, Weight weight) {
        assertEquals(weight, Judged.by(RULE, D850.X4000, slots + ": 256MB RDRAM-800 RIMM_184"));
    }

    @Test
    void theSentenceNamesTheSetOfABank() {
        assertEquals("Slot R4 holds no module, but another slot of its bank (0: R3, R4) does.",
                Judged.sentence(RULE, D850.X4000, "R1 R2 R3: 256MB RDRAM"));
    }

    @Test
    void theSentenceNamesTheBank() {
        assertEquals("Slot RIMM4 holds no module, but another slot of its bank (1) does.",
                Judged.sentence(RULE, D850.GB, "RIMM1 RIMM2 RIMM3: 128MB RDRAM"));
        assertEquals("Slot RIMM2 of the first bank (0) holds no module.",
                Judged.sentence(RULE, D850.GB, "RIMM1: 128MB RDRAM"));
    }

    @Test
    void oneChannelHasNoPairsAndOneWideModuleIsAPairByItself() {
        assertEquals(0, Judged.verdict(RULE, Judged.setup(D850.ONE_CHANNEL, "R1: 128MB RDRAM")).reasons().size());
        assertEquals(0, Judged.verdict(RULE, Judged.setup(D850.WIDE, "R2: 128MB RDRAM RIMM_232")).reasons().size());
    }

    @Test
    void channelsOfAnAbsentProcessorWaitForNoModule() {
        Board board = BoardText.board("none", """
                channel A 1 A1
                channel B 1 B1
                channel C 2 C1
                takes RDRAM RIMM_184
                """);
        assertEquals(Weight.BLOCKS, Judged.by(RULE, board, "A1 B1: 128MB RDRAM"));
        assertEquals(Weight.PASSES, Judged.verdict(RULE, new Setup(board, 1, Optional.empty(),
                Optional.empty(), Redundancy.NONE, ModuleText.population(board, "A1 B1: 128MB RDRAM"))).weight());
    }
}
