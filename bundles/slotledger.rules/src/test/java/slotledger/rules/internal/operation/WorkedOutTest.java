package slotledger.rules.internal.operation;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Operation;
import slotledger.rules.Setup;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.Judged;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.standard.StandardRules;

/**
 * Outside checks: the printed splits of ../shared/outside/tables/flex-examples.tsv, the rate table of the PowerEdge
 * T630 manual, peak bandwidths of RDRAM printed in the Abit CX6 manual.
 */
class WorkedOutTest {

    private static final String TRIPLE = """
            channel A 1 A1 A2
            channel B 1 B1 B2
            channel C 1 C1 C2
            takes DDR3 DIMM unbuffered
            interleave\s""";

    private static Arithmetic workOut(Board board, String population) {
        return StandardRules.create().workOut(Judged.setup(board, population));
    }

    private static List<String> parts(Board board, String population) {
        return workOut(board, population).parts().stream()
                .map(part -> "%d: %d x %s, %s".formatted(
                        part.processor(), part.channels(), part.capacity(), part.peak()))
                .toList();
    }

    private static List<String> sentences(Board board, String population) {
        return workOut(board, population).parts().stream().map(Arithmetic.Part::sentence).toList();
    }

    @Test
    void unequalChannelsAreSplitStepByStep() {
        Board board = BoardText.board("none", TRIPLE + "FLEXIBLE");
        String unequal = "A1 B1: 8GB DDR3-1333 DIMM; C1: 4GB DDR3-1333 DIMM";
        assertEquals(List.of("1: 3 x 12 GB, 32.0 GB/s", "1: 2 x 8 GB, 21.3 GB/s"), parts(board, unequal));
        assertEquals(List.of("3 channels hold at least 4 GB each (A 8 GB, B 8 GB, C 4 GB): 3 x 4 GB = 12 GB.",
                "2 channels hold 4 GB more than the 4 GB counted before: 2 x 4 GB = 8 GB."), sentences(board, unequal));
        assertEquals(List.of("1: 3 x 6 GB, 32.0 GB/s", "1: 2 x 4 GB, 21.3 GB/s", "1: 1 x 4 GB, 10.7 GB/s"),
                parts(board, "A1: 8GB DDR3-1333 DIMM; B1: 4GB DDR3-1333 DIMM; C1: 2GB DDR3-1333 DIMM"));
        assertEquals("triple channel with 8 GB alone", Judged.byAll(board, unequal).operation().mode().toString());
    }

    @Test
    void theFirstPartIsTheModeOfTheOperation() {
        for (String interleave : List.of("FLEXIBLE", "EQUAL_ONLY", "NONE", "UNKNOWN")) {
            Board board = BoardText.board("none", TRIPLE + interleave);
            for (String population : List.of("A1: 8GB DDR3-1333 DIMM", "A1 B1: 8GB DDR3-1333 DIMM",
                    "A1 B1: 8GB DDR3-1333 DIMM; C1: 4GB DDR3-1333 DIMM", "A1 A2 B1 C1: 2GB DDR3-1600 DIMM")) {
                Operation runs = Judged.byAll(board, population).operation();
                Arithmetic arithmetic = workOut(board, population);
                assertEquals(runs.mode().channels(), arithmetic.parts().get(0).channels());
                assertEquals(runs.mode().together(), arithmetic.parts().get(0).capacity());
                assertEquals(runs.peak(), arithmetic.parts().get(0).peak());
                assertEquals(runs.installed(), arithmetic.parts().stream().map(Arithmetic.Part::capacity)
                        .reduce(Capacity.NONE, Capacity::plus));
                assertEquals(runs.rate(), Optional.of(arithmetic.rates().get(0).rate()));
                assertEquals(runs.usable(),
                        arithmetic.capacities().get(arithmetic.capacities().size() - 1).leaves());
            }
        }
    }

    @Test
    void channelsThatDontRunTogetherSayWhy() {
        assertEquals(List.of("The channels hold A 8 GB, B 4 GB; channels must hold equal totals to run together, so "
                        + "they run one at a time."),
                sentences(BoardText.board("none", TRIPLE + "EQUAL_ONLY"),
                        "A1: 8GB DDR3-1333 DIMM; B1: 4GB DDR3-1333 DIMM"));
        assertEquals(List.of("1: 1 x 16 GB, 10.7 GB/s"),
                parts(BoardText.board("none", TRIPLE + "NONE"), "A1 B1: 8GB DDR3-1333 DIMM"));
    }

    @Test
    void aModuleThatCarriesTwoChannelsIsDualAlone() {
        Board camm = BoardText.board("none", "channel A 1 spans=2 C1\ntakes LPDDR5X LPCAMM2");
        assertEquals(List.of("1: 2 x 32 GB, 120.0 GB/s"), parts(camm, "C1: 32GB LPDDR5X-7500 LPCAMM2"));
        assertEquals(List.of("2 channels hold at least 16 GB each (A 32 GB over 2 channels): 2 x 16 GB = 32 GB."),
                sentences(camm, "C1: 32GB LPDDR5X-7500 LPCAMM2"));
        assertEquals("dual channel", Judged.byAll(camm, "C1: 32GB LPDDR5X-7500 LPCAMM2").operation().mode().toString());
        Board only = BoardText.board("none", "channel A 1 spans=2 C1\ntakes LPDDR5X LPCAMM2\ninterleave NONE");
        assertEquals("dual channel", Judged.byAll(only, "C1: 32GB LPDDR5X-7500 LPCAMM2").operation().mode().toString());
    }

    /** Abit CX6 manual: PC800 has 1.6 GB/s a channel; a 32-bit RIMM carries two. */
    @Test
    void aChannelOfRambusMemoryIsSixteenBitsWide() {
        Board narrow = BoardText.board("none", "channel A 1 R1\nchannel B 1 R2\ntakes RDRAM RIMM_184");
        assertEquals(List.of("1: 2 x 256 MB, 3.2 GB/s"), parts(narrow, "R1 R2: 128MB RDRAM-800 RIMM_184"));
        Board wide = BoardText.board("none", "channel A 1 spans=2 R1\ntakes RDRAM RIMM_232");
        assertEquals(List.of("1: 2 x 256 MB, 4.3 GB/s"), parts(wide, "R1: 256MB RDRAM-1066 RIMM_232"));
    }

    /** PowerEdge T630 manual: registered modules 2400, 2400 and 1866 MT/s with one, two and three in a channel. */
    @Test
    void everyBoundOfTheRateIsListedLowestFirst() {
        Board board = BoardText.board("T630", """
                form server
                channel 0 1 A1 A5 A9
                takes DDR4 DIMM registered
                limit dpc=1 registered 2400
                limit dpc=2 registered 2400
                limit dpc=3 registered 1866
                processor Small 2133
                processor Large 2400
                """);
        String full = "A1 A5: 16GB DDR4-2400 DIMM registered; A9: 16GB DDR4-2666 DIMM registered";
        assertEquals(List.of(
                "modules in a channel 1866 true The board runs no faster with 3 registered modules in channel 0.",
                "processor 2133 false It may hold, depending on which processor is installed.",
                "module 2400 true The modules in slots A1, A5 are rated 2400 MT/s.",
                "processor 2400 true No processor of this board runs memory faster.",
                "processor 2400 false It may hold, depending on which processor is installed.",
                "module 2666 true The module in slot A9 is rated 2666 MT/s."),
                workOut(board, full).rates().stream().map(bound -> "%s %d %s %s".formatted(bound.by().text(),
                        bound.rate().megatransfers(), bound.sure(), bound.sentence())).toList());
    }

    @Test
    void theConditionThatLowersTheRateIsNamed() {
        Board board = BoardText.board("none", """
                channel A 1 A1 A2
                takes DDR4 DIMM unbuffered
                limit dpc=1 ranks=1 2666
                limit dpc=1 ranks=2 2400
                limit dpc=2 ranks=1 2400
                limit dpc=2 ranks=2 2133
                """);
        assertEquals("ranks", first(board, "A1: 8GB DDR4-3200 DIMM 2Rx8"));
        assertEquals("modules in a channel", first(board, "A1 A2: 8GB DDR4-3200 DIMM 1Rx8"));
        assertEquals("module", first(board, "A1: 8GB DDR4-2133 DIMM 1Rx8"));
        assertEquals("board", first(BoardText.board("none", "channel A 1 A1\ntakes DDR4 DIMM\nlimit 2133"),
                "A1: 8GB DDR4-2400 DIMM"));
        assertEquals("fill table", first(BoardText.board("none",
                "channel A 1 A1 A2\ntakes DDR4 DIMM\nrow 1 A1 A2 1866"), "A1 A2: 8GB DDR4-2400 DIMM"));
        assertEquals("voltage", first(BoardText.board("none",
                "channel A 1 A1\ntakes DDR3 DIMM volts=1350\nlimit mv=1350 1066\nlimit mv=1500 1333"),
                "A1: 8GB DDR3-1333 DIMM 1350/1500mV"));
    }

    private static String first(Board board, String population) {
        return workOut(board, population).rates().get(0).by().text();
    }

    @Test
    void theStepsLeadFromInstalledToUsable() {
        Board board = BoardText.board("none", """
                channel A 1 A1 A2
                channel B 1 B1 B2
                takes DDR3 DIMM
                addressable 24GB
                processor Old 1333 16GB
                redundancy MIRRORED share=1/2
                """);
        Setup setup = new Setup(board, 1, Optional.of(board.processors().get(0)), Optional.of("Windows 7 Pro 32-bit"),
                Redundancy.MIRRORED, ModuleText.population(board, "A1 A2 B1 B2: 8GB DDR3-1333 DIMM"));
        assertEquals(List.of(
                "installed 32 GB: 4 modules hold 32 GB together.",
                "chipset addresses 24 GB: The chipset addresses up to 24 GB.",
                "processor addresses 16 GB: The processor addresses up to 16 GB.",
                "mirrored 16 GB: 1 of 2 parts of the 32 GB are usable, which makes 16 GB.",
                "operating system uses 4 GB: Windows 7 Pro 32-bit uses up to 4 GB."),
                StandardRules.create().workOut(setup).capacities().stream().map(step -> "%s %s: %s".formatted(
                        step.name(), step.leaves(), step.sentence())).toList());
        Operation runs = StandardRules.create().operate(setup);
        assertEquals(Capacity.ofGiB(16), runs.addressable());
        assertEquals(Capacity.ofGiB(4), runs.usable());
    }
}
