package slotledger.simm.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.MemoryRuleContract;
import slotledger.rules.spi.MemoryRule;

/** Outside check: none; common practice. */
class PageModeFitsTest extends MemoryRuleContract {

    private static final MemoryRule RULE = new PageModeFits();
    private static final Board FPM_ONLY = BoardText.board("none", "channel A 1 A1 A2\ntakes FPM SIMM_72");

    @Override
    protected MemoryRule rule() {
        return new PageModeFits();
    }

    @Test
    void whatTheBoardNamesPasses() {
        assertEquals(Weight.PASSES, Judged.by(RULE, FPM_ONLY, "A1: 16MB FPM SIMM_72"));
        assertEquals(Weight.PASSES, Judged.by(RULE, Simm.PENTIUM, "S1 S2: 16MB EDO SIMM_72"));
        assertEquals(Weight.PASSES, Judged.by(RULE, Simm.PENTIUM, "S1 S2: 16MB FPM SIMM_72"));
    }

    @Test
    void aBankOfEachConcernsAllModulesWhereTheBoardTakesEither() {
        Reason reason = Judged.verdict(RULE, Judged.setup(
                Simm.PENTIUM, "S1 S2: 16MB EDO SIMM_72; S3 S4: 16MB FPM SIMM_72")).reasons().get(0);
        assertEquals(Weight.UNKNOWN, reason.weight());
        assertEquals(List.of("S1", "S2", "S3", "S4"), reason.slots());
        assertEquals("The 16 MB module in slot S1 is EDO beside FPM; the document takes either, but doesn't say that "
                + "they may be mixed.", reason.sentence());
    }

    @Test
    void edoInABoardForFpmMayFail() {
        Reason reason = Judged.verdict(RULE, Judged.setup(FPM_ONLY, "A1: 16MB EDO SIMM_72")).reasons().get(0);
        assertEquals(Weight.UNKNOWN, reason.weight());
        assertEquals(Optional.of(MissingFact.BOARD_FACT), reason.missing());
        assertEquals("The 16 MB module in slot A1 is EDO; the document names FPM only. It has the same notches and "
                + "goes in, but may fail.", reason.sentence());
    }

    @Test
    void anotherGenerationNeverWorks() {
        assertEquals("The 64 MB module in slot A1 is SDR; the slot takes FPM.",
                Judged.sentence(RULE, FPM_ONLY, "A1: 64MB SDR DIMM"));
        assertEquals(Weight.BLOCKS, Judged.by(RULE, FPM_ONLY, "A1: 64MB SDR DIMM"));
    }

    @Test
    void whatNobodySaidIsMissing() {
        Reason reason = Judged.verdict(RULE, Judged.setup(FPM_ONLY, "A1: 16MB SIMM_72")).reasons().get(0);
        assertEquals(Optional.of(MissingFact.GENERATION), reason.missing());
        assertEquals(RULE.page().howToTell(), reason.remedy());
    }
}
