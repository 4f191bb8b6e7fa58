package slotledger.rules.internal.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Operation;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.standard.StandardRules;

/** Outside checks: ASUS TUF B360 manual (eighth-generation processors cap 2666), System x3550 M4 guide p.46 (DDR3L). */
class RunningRateTest {

    private static final String DESKTOP = """
            channel A 1 A1 A2
            channel B 1 B1 B2
            takes DDR4 DIMM unbuffered
            """;

    private static void assertRate(int rate, String why, Board board, String population) {
        Operation runs = Judged.byAll(board, population).operation();
        assertEquals(rate == 0 ? Optional.empty() : Optional.of(Rate.of(rate)), runs.rate());
        assertEquals(why, runs.rateWhy());
    }

    private static Board board(String more) {
        return BoardText.board("none", DESKTOP + more);
    }

    @Test
    void theSlowestModuleSetsTheRate() {
        assertRate(2400, "The 8 GB module in slot B1 is rated for that.", board(""),
                "A1: 8GB DDR4-2666 DIMM; B1: 8GB DDR4-2400 DIMM");
    }

    @Test
    void anUnknownRatingLeavesTheRateUnknown() {
        assertRate(0, "The rate is not known, because the rating of the module in slot B1 is not known.", board(""),
                "A1: 8GB DDR4-2666 DIMM; B1: 8GB DDR4 DIMM");
    }

    @Test
    void theFullestChannelSetsTheRateOfAll() {
        assertRate(2133, "The board runs no faster with 2 modules with 2 ranks in channel A.",
                board("limit dpc=1 2666\nlimit dpc=2 ranks=1 2400\nlimit dpc=2 ranks=2 2133"),
                "A1 A2 B1: 8GB DDR4-2666 DIMM 2Rx8");
    }

    @Test
    void aLimitWithoutConditionsHoldsForTheBoard() {
        assertRate(2400, "The board runs memory no faster.", board("limit 2400\nlimit dpc=2 2133"),
                "A1: 8GB DDR4-2666 DIMM");
    }

    @Test
    void aLimitThatHangsOnAnUnknownFactLeavesTheRateUnknown() {
        Board board = board("limit dpc=2 ranks=1 2400\nlimit dpc=2 ranks=2 2133");
        assertRate(0,
                "The rate is not known: 2666 MT/s or 2133 MT/s, depending on the ranks of the modules in channel A.",
                board, "A1 A2: 8GB DDR4-2666 DIMM");
        assertRate(2133, "The 8 GB module in slot A1 is rated for that.", board, "A1 A2: 8GB DDR4-2133 DIMM");
    }

    @Test
    void theProcessorSetsTheRateWhereItIsKnown() {
        Board board = board("processor Eighth 2666\nprocessor Seventh 2400");
        Setup setup = new Setup(board, 1, Optional.of(board.processors().get(0)), Optional.empty(), Redundancy.NONE,
                ModuleText.population(board, "A1: 8GB DDR4-3200 DIMM"));
        assertEquals("The processor (Eighth) runs memory no faster.", StandardRules.create().operate(setup).rateWhy());
        assertRate(0, "The rate is not known: 2666 MT/s or 2400 MT/s, depending on which processor is installed.",
                board, "A1: 8GB DDR4-3200 DIMM");
        assertRate(2400, "The 8 GB module in slot A1 is rated for that.", board, "A1: 8GB DDR4-2400 DIMM");
    }

    @Test
    void aLimitAtTheLowVoltageHoldsWhereAllModulesWorkAtIt() {
        Board board = BoardText.board("System x3550 M4 guide", """
                channel A 1 A1 A2
                takes DDR3 DIMM volts=1350,1500
                limit mv=1350 1333
                limit mv=1500 1600
                """);
        assertRate(1333, "The board runs no faster with any modules at 1.35 V in channel A.", board,
                "A1 A2: 8GB DDR3-1866 DIMM 1350/1500mV");
        assertRate(1600, "The board runs no faster with any modules at 1.5 V in channel A.", board,
                "A1: 8GB DDR3-1866 DIMM 1350/1500mV; A2: 8GB DDR3-1866 DIMM 1500mV");
    }

    @Test
    void simmsHaveAnAccessTimeInsteadOfARate() {
        Board simms = BoardText.board("none", "channel A 1 S1 S2\ntakes EDO SIMM_72");
        assertRate(0, "FPM and EDO memory has no rate but an access time; the slowest is 70 ns.", simms,
                "S1: 16MB EDO SIMM_72 60ns; S2: 16MB EDO SIMM_72 70ns");
    }

    @Test
    void noMemoryHasNoRate() {
        assertRate(0, "", board(""), "");
    }
}
