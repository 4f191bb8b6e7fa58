package slotledger.catalog.internal.file;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.catalog.BoardFormat;
import slotledger.catalog.spi.BoardFile;
import slotledger.model.board.Bank;
import slotledger.model.board.Banks;
import slotledger.model.board.Binding;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Channel;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.FillRow;
import slotledger.model.board.Interleave;
import slotledger.model.board.RateLimit;
import slotledger.model.board.Redundancy;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.board.RedundancyTerms.FillSet;
import slotledger.model.board.RedundancyTerms.Share;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.board.Takes;
import slotledger.model.finding.Finding;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

class BoardReadingTest {

    private static final String SMALLEST = """
            board: kestrin-kb999
            maker: Kestrin
            model: KB-999
            form: desktop
            source: from memory
            channels: {A: [A2, A1], B: [B2, B1]}
            takes: {generation: DDR4, form: DIMM}
            """;

    private static BoardReading read(String yaml) {
        return BoardReading.of(new BoardFile("board.yaml", yaml));
    }

    private static Board board(String yaml) {
        BoardReading reading = read(yaml);
        assertEquals(List.of(), reading.findings());
        return reading.entry().orElseThrow().board();
    }

    private static Finding onlyFinding(String yaml) {
        BoardReading reading = read(yaml);
        assertEquals(1, reading.findings().size(), reading.findings().toString());
        assertEquals(Optional.empty(), reading.entry());
        return reading.findings().get(0);
    }

    @Test
    void everyFieldOfTheTemplateArrivesInTheBoard() {
        Board board = board(BoardFormat.template());

        assertEquals("Example X100", board.name());
        assertEquals(List.of("Office X100", "EX-100"), board.aliases());
        Optional<LocalDate> date = Optional.of(LocalDate.of(2016, 3, 1));
        assertEquals(new Source(Ground.DOCUMENT, "X100 Service Manual", "page 17", date), board.source());
        assertEquals(Ground.MEASURED, board.sourceOf(BoardFact.ECC).ground());
        assertEquals(Ground.MEMORY, board.sourceOf(BoardFact.LARGEST_TOTAL).ground());
        assertEquals(board.source(), board.sourceOf(BoardFact.VOLTAGE));
        assertEquals(2, board.processors().size());
        assertEquals(Optional.of(Rate.of(2400)), board.processors().get(0).fastest());
        assertEquals(List.of(new Channel("A", 1), new Channel("B", 1)), board.channels());
        assertEquals(Optional.of("blue"), board.slot("DIMM2").colour());
        assertEquals(SlotUse.DEAD, board.slot("DIMM3").use());
        assertEquals(Capacity.ofGiB(4), board.slot("DIMM4").soldered().orElseThrow().capacity());
        assertEquals(Optional.of(Capacity.ofGiB(36)), board.largestTotal());
        assertEquals(List.of("DIMM1", "DIMM2"), board.fill().order());
        assertEquals(List.of(
                new FillRow(1, List.of("DIMM1"), Optional.empty()),
                new FillRow(1, List.of("DIMM1", "DIMM2"), Optional.of(Rate.of(2400)))), board.fill().table());
        assertEquals(Binding.RECOMMENDED, board.fill().binding());
        assertEquals(Interleave.FLEXIBLE, board.interleave());
        assertEquals(List.of(RateLimit.always(Rate.of(2400)), new RateLimit(OptionalInt.of(2), OptionalInt.of(2),
                Optional.of(Buffering.UNBUFFERED), Optional.of(Voltage.ofMillivolts(1200)), Rate.of(2133))),
                board.rateLimits());
        assertEquals(2, board.notes().size());
        assertEquals(List.of(new Takes(Set.of("DIMM1", "DIMM2"), Generation.DDR4, Set.of(Form.DIMM),
                Set.of(Buffering.UNBUFFERED), EccOutcome.IGNORED, Set.of(Voltage.ofMillivolts(1200)),
                Set.of(Rate.of(2133), Rate.of(2400), Rate.of(2666)), Optional.of(Capacity.ofGiB(4)),
                Optional.of(Capacity.ofGiB(16)), Set.of(ChipWidth.X8, ChipWidth.X16), Optional.of(ChipSize.ofGbit(4)),
                Optional.of(ChipSize.ofGbit(8)), OptionalInt.of(2), OptionalInt.of(4), OptionalInt.of(1),
                Optional.empty(), Optional.empty())), board.takes());
        assertEquals(new Banks(List.of(new Bank("0", List.of("DIMM1")), new Bank("1", List.of("DIMM2"))),
                OptionalInt.of(64)), board.banks());
        assertEquals(Optional.of(Capacity.ofGiB(64)), board.addressable());
        assertEquals(Optional.empty(), board.fill().blank());
        assertEquals(List.of(new RedundancyTerms(Redundancy.MIRRORED, Optional.of(new Share(1, 2)), Set.of("B"),
                List.of(new FillSet(1, List.of("DIMM1")), new FillSet(1, List.of("DIMM2"))), OptionalInt.of(2))),
                board.redundancies());
        assertEquals(OptionalInt.of(1), board.slot("DIMM4").soldered().orElseThrow().stack());
    }

    @Test
    void theFirstSlotOfAChannelIsTheFirstInTheList() {
        Board board = board(SMALLEST);

        assertEquals(1, board.slot("A2").position());
        assertEquals(2, board.slot("A1").position());
        assertEquals("A", board.slot("A1").channel());
    }

    @Test
    void listsInTheListOfSlotsAreRowsOfThePicture() {
        Board board = board(SMALLEST + "slots: [[A1, A2], [B1, B2]]\n");

        assertEquals(List.of("A1 0/0", "A2 0/1", "B1 1/0", "B2 1/1"), board.slots().stream()
                .map(slot -> slot.label() + " " + slot.row() + "/" + slot.column()).toList());
    }

    @Test
    void aSilentDocumentLeavesFactsUnknown() {
        Board board = board(SMALLEST);

        assertEquals(EccOutcome.UNKNOWN, board.takes().get(0).ecc());
        assertEquals(Set.of(), board.takes().get(0).voltages());
        assertEquals(Interleave.UNKNOWN, board.interleave());
        assertEquals(Optional.empty(), board.largestTotal());
    }

    @Test
    void aMisspeltFieldIsFoundWithLineAndColumnAndASuggestion() {
        Finding finding = onlyFinding(SMALLEST.replace("form: desktop", "from: desktop\nform: desktop"));

        assertEquals("board.yaml, line 4, column 1", finding.place().toString());
        assertEquals("Maybe \"form\" is meant.", finding.remedy());
        assertEquals("from", finding.seen());
    }

    @Test
    void aMisspeltWordIsFoundWithASuggestion() {
        Finding finding = onlyFinding(SMALLEST.replace("form: DIMM", "form: DIM"));

        assertEquals("board.yaml, line 7, column 33", finding.place().toString());
        assertEquals("DIM", finding.seen());
        assertTrue(finding.expected().contains("SO-DIMM"), finding.expected());
        assertEquals("Maybe \"DIMM\" is meant.", finding.remedy());
    }

    @Test
    void everyProblemOfAFileIsReportedAtOnce() {
        BoardReading reading = read(SMALLEST.replace("form: desktop", "form: box").replace("maker: Kestrin\n", "")
                + "largest-total: lots\nfill: [A1, C1]\n");

        assertEquals(4, reading.findings().size(), reading.findings().toString());
    }

    @Test
    void aSlotInNoChannelIsRefused() {
        assertTrue(onlyFinding(SMALLEST + "slots: [A1, A2, B1, B2, C1]\n").message().contains("in no channel"));
    }

    @Test
    void aSlotInTwoChannelsIsRefused() {
        assertTrue(onlyFinding(SMALLEST.replace("B: [B2, B1]", "B: [B2, B1, A1]")).message().contains("already"));
    }

    @Test
    void aChannelOfAProcessorTheBoardHasNotIsRefused() {
        onlyFinding(SMALLEST.replace("B: [B2, B1]", "B: {processor: 2, slots: [B2, B1]}"));
    }

    @Test
    void aFieldGivenTwiceIsRefused() {
        assertTrue(onlyFinding(SMALLEST + "model: KB-998\n").message().contains("there twice"));
    }

    @Test
    void anEmptyValueIsRefused() {
        assertEquals("board.yaml, line 8, column 7", onlyFinding(SMALLEST + "notes:\n").place().toString());
    }

    @Test
    void brokenYamlIsFoundWithItsLine() {
        Finding finding = onlyFinding("board: x\nmaker: [a, b\nmodel: y\n");

        assertEquals("board-file-syntax", finding.code());
        assertTrue(finding.place().row().isPresent(), finding.toString());
    }

    @Test
    void anEmptyFileHoldsNoBoard() {
        assertEquals("board-file-empty", onlyFinding("").code());
        assertEquals("board-file-empty", onlyFinding("# nothing yet\n").code());
    }

    @Test
    void aListInsteadOfABoardIsRefused() {
        onlyFinding("- board: x\n");
    }

    @Test
    void twoDocumentsInAFileAreRefused() {
        onlyFinding(SMALLEST + "---\n" + SMALLEST);
    }

    @Test
    void nestedAliasesAreRefusedBeforeTheyGrow() {
        StringBuilder bomb = new StringBuilder("a0: &a0 [x, x]\n");
        for (int i = 1; i < 40; i++) {
            bomb.append("a%d: &a%d [*a%d, *a%d]\n".formatted(i, i, i - 1, i - 1));
        }
        assertEquals("board-file-syntax", onlyFinding(bomb.toString()).code());
    }

    @Test
    void aListThatHoldsItselfIsRefused() {
        onlyFinding(SMALLEST + "notes: &n [*n]\n");
    }

    @Test
    void deepNestingIsRefused() {
        assertEquals("board-file-too-large", onlyFinding("[".repeat(10_000)).code());
        assertEquals("board-file-too-large", onlyFinding("x: " + "{a: ".repeat(5_000)).code());
    }

    @Test
    void aHugeFileIsRefused() {
        assertEquals("board-file-too-large", onlyFinding("x".repeat(YamlText.MOST_CHARACTERS + 1)).code());
        assertEquals("board-file-too-large", onlyFinding("notes:\n" + "- a\n".repeat(25_000)).code());
    }

    @Test
    void aForeignTagMakesNoObject() {
        read(SMALLEST + "notes: !!javax.script.ScriptEngineManager [x]\n");
        assertTrue(read(SMALLEST + "notes: !!java.io.File /etc/passwd\n").entry()
                .map(entry -> entry.board().notes().equals(List.of("/etc/passwd"))).orElse(true));
    }

    @Test
    void theSlotsOfASecondProcessorAreItsOwn() {
        Board board = board(SMALLEST.replace("B: [B2, B1]", "B: {processor: 2, slots: [B2, B1]}")
                + "processor-sockets: 2\n");

        assertEquals(2, board.channel("B").processor());
        assertEquals(List.of("A2", "A1", "B2", "B1"), board.slots().stream().map(Slot::label).toList());
    }
}
