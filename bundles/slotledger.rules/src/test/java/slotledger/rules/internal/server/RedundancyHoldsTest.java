package slotledger.rules.internal.server;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.spi.MemoryRule;

/** Outside check: System x3550 M5 Installation and Service Guide, Table 28 (mirrored channels, one processor). */
class RedundancyHoldsTest {

    private static final MemoryRule RULE = new RedundancyHolds();
    private static final String FRAME = """
            form server
            channel A 1 1 2 3
            channel B 1 4 5 6
            channel C 1 9 8 7
            channel D 1 12 11 10
            takes DDR4 DIMM registered
            order 1 9 4 12 2 8 5 11 3 7 6 10
            fill required
            """;
    private static final Board X3550_M5 = BoardText.board("x3550 M5, Table 28", FRAME
            + "redundancy MIRRORED share=1/2 set=1:1,4 set=1:9,12 set=1:2,5 set=1:8,11 set=1:3,6 set=1:7,10\n"
            + "redundancy SPARED channelRanks=2");
    private static final String MODULE = ": 16GB DDR4-2133 DIMM registered 2Rx4";

    private static Setup setup(Board board, Redundancy redundancy, String population) {
        return new Setup(board, 1, Optional.empty(), Optional.empty(), redundancy,
                ModuleText.population(board, population));
    }

    private static Weight mirrored(String population) {
        return Judged.verdict(RULE, setup(X3550_M5, Redundancy.MIRRORED, population)).weight();
    }

    private static String sentence(Board board, Redundancy redundancy, String population) {
        return Judged.verdict(RULE, setup(board, redundancy, population)).reasons().get(0).sentence();
    }

    @Test
    void mirroredSocketsAreFilledTogetherInTheirOrder() {
        assertEquals(Weight.PASSES, mirrored("1 4 9 12" + MODULE));
        assertEquals(Weight.BLOCKS, mirrored("1 9" + MODULE));
        assertEquals(Weight.BLOCKS, mirrored("9 12" + MODULE));
        assertEquals(Weight.BLOCKS, mirrored("1" + MODULE + "; 4: 8GB DDR4-2133 DIMM registered 1Rx4"));
        assertEquals("Of sockets 1, 4 1 of 2 are filled; for mirrored memory they are filled together.",
                sentence(X3550_M5, Redundancy.MIRRORED, "1 9" + MODULE));
    }

    @Test
    void aModuleOutsideOfAllSetsIsNotMirrored() {
        Board board = BoardText.board("two sets", FRAME + "redundancy MIRRORED share=1/2 set=1:1,4 set=1:9,12");
        Setup setup = setup(board, Redundancy.MIRRORED, "1 4 2" + MODULE);
        assertEquals(Weight.BLOCKS, Judged.verdict(RULE, setup).weight());
        assertEquals("The 16 GB module in slot 2 is in none of the sets that the document prints for mirrored memory.",
                sentence(board, Redundancy.MIRRORED, "1 4 2" + MODULE));
    }

    @Test
    void halfOfMirroredMemoryIsUsable() {
        Verdict verdict = Judged.byAll(setup(X3550_M5, Redundancy.MIRRORED, "1 4 9 12" + MODULE));
        assertEquals(Capacity.ofGiB(64), verdict.operation().installed());
        assertEquals(Capacity.ofGiB(64), verdict.operation().addressable());
        assertEquals(Capacity.ofGiB(32), verdict.operation().usable());
        assertEquals("The memory is mirrored. 1 of 2 parts of the 64 GB are usable, which makes 32 GB.",
                sentence(X3550_M5, Redundancy.MIRRORED, "1 4 9 12" + MODULE));
    }

    @Test
    void thePrintedSetsTakeThePlaceOfTheUsualOrder() {
        Verdict mirrored = Judged.byAll(setup(X3550_M5, Redundancy.MIRRORED, "1 4" + MODULE));
        assertEquals(0, mirrored.reasons(Weight.BLOCKS).size(), () -> mirrored.reasons().toString());
        Verdict independent = Judged.byAll(setup(X3550_M5, Redundancy.NONE, "1 4" + MODULE));
        assertEquals("fill-order", independent.reasons(Weight.BLOCKS).get(0).rule());
    }

    @Test
    void theLargestRankOfEachChannelIsKeptSpare() {
        Setup spare = setup(X3550_M5, Redundancy.SPARED, "1 9" + MODULE);
        assertEquals(Capacity.ofGiB(16), Judged.verdict(RULE, spare).operation().usable());
        assertEquals("The memory is spare. The largest rank of each channel is kept, 16 GB together, so that 16 GB of "
                + "the 32 GB are left.", sentence(X3550_M5, Redundancy.SPARED, "1 9" + MODULE));
        assertEquals(Weight.BLOCKS, Judged.verdict(RULE,
                setup(X3550_M5, Redundancy.SPARED, "1: 8GB DDR4-2133 DIMM registered 1Rx4")).weight());
        Verdict open = Judged.verdict(RULE, setup(X3550_M5, Redundancy.SPARED, "1: 8GB DDR4-2133 DIMM registered"));
        assertEquals(Weight.UNKNOWN, open.weight());
        assertEquals(Optional.of(MissingFact.RANKS), open.reasons().get(0).missing());
    }

    /** System x3650 M4 BD: mirrored mode ignores the sockets of one channel and leaves a third of three channels. */
    @Test
    void ignoredChannelsDontCount() {
        Board board = BoardText.board("x3650 M4 BD", """
                form server
                channel 1 1 A
                channel 2 1 B
                channel 3 1 C
                takes DDR3 DIMM registered
                redundancy MIRRORED share=1/2 ignored=1
                """);
        Setup setup = setup(board, Redundancy.MIRRORED, "A B C: 8GB DDR3 DIMM registered");
        assertEquals(Weight.LOWERS, Judged.verdict(RULE, setup).weight());
        assertEquals(Capacity.ofGiB(8), Judged.verdict(RULE, setup).operation().usable());
    }

    @Test
    void aBoardWithoutTermsLeavesItOpen() {
        Board board = BoardText.board("none", FRAME);
        Verdict verdict = Judged.verdict(RULE, setup(board, Redundancy.MIRRORED, "1 4" + MODULE));
        assertEquals(Weight.UNKNOWN, verdict.weight());
        assertEquals(Optional.of(MissingFact.BOARD_FACT), verdict.reasons().get(0).missing());
        assertEquals(0, Judged.verdict(RULE, setup(board, Redundancy.NONE, "1 4" + MODULE)).reasons().size());
    }
}
