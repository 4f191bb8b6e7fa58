package slotledger.rules.outside;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.ChannelMode;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.testkit.OutsideData;

/** Outside check: worked examples of dual-channel splits printed by a hardware magazine, and the makers' rule. */
class FlexSplitTest {

    private static final String BOARD = """
            channel A 1 A1 A2
            channel B 1 B1 B2
            takes DDR3 DIMM
            interleave\s""";

    private static ChannelMode mode(String interleave, String population) {
        return Judged.byAll(BoardText.board("none", BOARD + interleave), population).operation().mode();
    }

    @Test
    void theSplitIsAsPrinted() throws IOException {
        int rows = 0;
        for (String line : Files.readAllLines(OutsideData.file("tables/flex-examples.tsv"))) {
            if (!Character.isDigit(line.charAt(0))) {
                continue;
            }
            rows++;
            String[] cells = line.split("\t");
            String second = cells[1].equals("0") ? "" : "; B1: " + cells[1] + "GB DDR3 DIMM";
            ChannelMode mode = mode("FLEXIBLE", "A1: " + cells[0] + "GB DDR3 DIMM" + second);
            Capacity dual = mode.channels() == 2 ? mode.together() : Capacity.NONE;
            Capacity single = mode.channels() == 2 ? mode.remainder() : mode.together();
            assertEquals(Capacity.ofGiB(Integer.parseInt(cells[2])), dual, line);
            assertEquals(Capacity.ofGiB(Integer.parseInt(cells[3])), single, line);
        }
        assertEquals(7, rows);
    }

    /** Printed example: one 4 GB module in A, two of 2 GB in B: only totals count. */
    @Test
    void onlyTotalsCount() {
        assertEquals("dual channel",
                mode("FLEXIBLE", "A1: 4GB DDR3 DIMM; B1 B2: 2GB DDR3 DIMM").toString());
        assertEquals("dual channel with 2 GB alone",
                mode("FLEXIBLE", "A1: 8GB DDR3 DIMM; A2: 2GB DDR3 DIMM; B1 B2: 4GB DDR3 DIMM").toString());
    }

    /** Intel datasheet of the 3560M, 2.1.3: without that ability unequal channels run one at a time. */
    @Test
    void unequalChannelsRunAloneOnABoardThatOnlyJoinsEqualOnes() {
        String unequal = "A1: 4GB DDR3 DIMM; B1: 2GB DDR3 DIMM";
        assertEquals("single channel", mode("EQUAL_ONLY", unequal).toString());
        assertEquals("single channel", mode("UNKNOWN", unequal).toString());
        assertEquals("dual channel", mode("EQUAL_ONLY", "A1 B1: 2GB DDR3 DIMM").toString());
        assertEquals("single channel", mode("NONE", "A1 B1: 2GB DDR3 DIMM").toString());
    }

    /** Intel DX58SO and DX79TO manuals: three equal channels run triple, four quad. */
    @Test
    void threeAndFourEqualChannelsRunTogether() {
        Board board = BoardText.board("DX79TO", """
                channel A 1 A
                channel B 1 B
                channel C 1 C
                channel D 1 D
                takes DDR3 DIMM
                """);
        assertEquals("triple channel", Judged.byAll(board, "A B C: 2GB DDR3 DIMM").operation().mode().toString());
        assertEquals("quad channel", Judged.byAll(board, "A B C D: 2GB DDR3 DIMM").operation().mode().toString());
    }
}
