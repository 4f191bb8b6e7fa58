package slotledger.rules.internal.rdram;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.Judged;
import slotledger.rules.spi.MemoryRule;

/** Outside check: Abit CX6 manual, "all memory expansion sockets must be occupied". */
class SocketsFilledTest {

    private static final MemoryRule RULE = new SocketsFilled();

    @Test
    void modulesAndContinuityModulesFillTheSockets() {
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB,
                "RIMM1 RIMM2: 128MB RDRAM-800 RIMM_184; RIMM3 RIMM4: CONTINUITY_184"));
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.GB, "RIMM1 RIMM2 RIMM3 RIMM4: 128MB RDRAM-800 RIMM_184"));
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.WIDE, "R1: 128MB RDRAM-800 RIMM_232; R2: CONTINUITY_232"));
    }

    @Test
    void anEmptySocketBreaksTheChannel() {
        assertEquals(Weight.BLOCKS, Judged.by(RULE, D850.ONE_CHANNEL, "R1: 128MB RDRAM RIMM_184; R2: CONTINUITY_184"));
        assertEquals("Slot R3 is empty: the channel is broken there. It takes a module or a 184-pin continuity module.",
                Judged.sentence(RULE, D850.ONE_CHANNEL, "R1: 128MB RDRAM RIMM_184; R2: CONTINUITY_184"));
    }

    /** HP x4000: the remaining two sockets of a bank take continuity modules; a bank is filled or empty as a whole. */
    @Test
    void aFurtherBankMayBeWhollyEmptyWhereTheDocumentWantsNothingInIt() {
        String first = "R1 R2: 256MB RDRAM-800 RIMM_184; ";
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.X4000, first + "R3 R4: CONTINUITY_184"));
        assertEquals(Weight.PASSES, Judged.by(RULE, D850.X4000, first + "R3 R4 R5 R6 R7 R8: CONTINUITY_184"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, D850.X4000, first + "R5 R6 R7 R8: CONTINUITY_184"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, D850.X4000, first + "R3 R4 R5: CONTINUITY_184"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, D850.GB, "RIMM1 RIMM2: 128MB RDRAM-800 RIMM_184"));
    }

    @Test
    void aContinuityModuleOfTheOtherFormIsWrong() {
        assertEquals("Slot R2 holds a 184-pin continuity module; it takes a module or a 232-pin continuity and "
                + "termination module.",
                Judged.sentence(RULE, D850.WIDE, "R1: 128MB RDRAM-800 RIMM_232; R2: CONTINUITY_184"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, D850.GB,
                "RIMM1 RIMM2: 128MB RDRAM-800 RIMM_184; RIMM3 RIMM4: AIR_BLANK"));
    }
}
