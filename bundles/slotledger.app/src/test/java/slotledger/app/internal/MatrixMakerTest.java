package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Banks;
import slotledger.model.board.Binding;
import slotledger.model.board.Board;
import slotledger.model.board.BoardForm;
import slotledger.model.board.BoardId;
import slotledger.model.board.Channel;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.Fill;
import slotledger.model.board.FillRow;
import slotledger.model.board.Interleave;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.board.Takes;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.matrix.BoardMatrix.Cell;
import slotledger.model.matrix.BoardMatrix.Column;
import slotledger.model.matrix.KnownFrom;
import slotledger.model.module.Buffering;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.task.Progress;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.standard.StandardRules;

class MatrixMakerTest {

    private static final MemoryRules RULES = StandardRules.create();
    static final ModuleKind PLAIN = ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(8))
            .with(Buffering.UNBUFFERED).with(ErrorCheck.NONE).with(Rate.of(2400));

    @Test
    void everySlotIsAColumnAndAllSocketsAreTheLast() {
        BoardMatrix matrix = make(PLAIN);
        assertEquals(List.of("Chips", "S1", "S2", "S3", "S4", "X", "all sockets"),
                matrix.columns().stream().map(Column::name).toList());
        assertEquals("soldered, 4 GB", matrix.columns().get(0).closed());
        assertEquals("dead, not wired", matrix.columns().get(5).closed());
    }

    @Test
    void nothingIsTriedWhereNothingCanBePut() {
        BoardMatrix matrix = make(PLAIN);
        assertEquals(Optional.empty(), matrix.rows().get(0).cells().get(0));
        assertEquals(Optional.empty(), matrix.rows().get(0).cells().get(5));
    }

    @Test
    void aSocketThatComesLaterIsTriedWithThoseBefore() {
        // The board's table has S1, S1+S3 and all four, and allows nothing else.
        assertEquals(List.of("S1", "S3"), cell(PLAIN, "S3").filled());
        assertEquals(List.of("S1", "S2", "S3", "S4"), cell(PLAIN, "S2").filled());
        assertEquals(List.of("S1", "S2", "S3", "S4"), cell(PLAIN, "all sockets").filled());
        assertTrue(cell(PLAIN, "S3").weight().compareTo(Weight.UNKNOWN) < 0, cell(PLAIN, "S3").verdict().toString());
        assertEquals(2, cell(PLAIN, "S3").runs().mode().channels());
    }

    @Test
    void aBetterSetOfAnotherSocketCountsForThisOneToo() {
        // Alone in S1 it runs over one channel; the set for S3 holds S1, too.
        Board board = board();
        Board open = new Board(board.id(), board.maker(), board.model(), board.aliases(), board.form(), 1, List.of(),
                board.channels(), board.sockets(), board.takes(), Optional.empty(), Optional.empty(), board.fill(),
                Banks.NONE, List.of(), Interleave.FLEXIBLE, List.of(), List.of(), board.source(), Map.of());
        BoardMatrix matrix = new MatrixMaker(RULES, open).make(Map.of(PLAIN, Set.of(KnownFrom.ASKED)), Progress.NONE);
        Cell first = matrix.rows().get(0).cells().get(0).orElseThrow();
        assertEquals(Weight.PASSES, first.weight(), first.verdict().toString());
        assertEquals(List.of("S1", "S3"), first.filled());
    }

    @Test
    void whatIsBlockedEverywhereIsShownWithTheFewestModules() {
        Cell cell = cell(PLAIN.with(Generation.DDR3), "S2");
        assertEquals(Weight.BLOCKS, cell.weight());
        assertEquals(List.of("S2"), cell.filled());
    }

    @Test
    void ofSeveralReasonsTheOneThatSaysItAllIsReadFirst() {
        Cell cell = cell(PLAIN.with(Generation.DDR3).with(Voltage.ofMillivolts(1500)), "S2");
        assertTrue(cell.verdict().reasons(Weight.BLOCKS).size() > 1, cell.verdict().toString());
        assertEquals("generation", cell.why().orElseThrow().rule());
    }

    @Test
    void aMissingFactIsNamed() {
        ModuleKind unclear = ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(8)).with(Rate.of(2400));
        assertEquals(Weight.UNKNOWN, cell(unclear, "S1").weight());
        assertEquals(Optional.of(MissingFact.BUFFERING), cell(unclear, "S1").missing());
    }

    @Test
    void everyCellSaysWhatTheRulesSayOfItsPopulation() {
        for (Optional<Cell> cell : make(PLAIN, PLAIN.with(Generation.DDR5)).rows().get(1).cells()) {
            cell.ifPresent(tried -> assertEquals(tried.weight(), tried.verdict().weight()));
        }
    }

    private static Cell cell(ModuleKind kind, String column) {
        BoardMatrix matrix = make(kind);
        List<String> names = matrix.columns().stream().map(Column::name).toList();
        return matrix.rows().get(0).cells().get(names.indexOf(column)).orElseThrow();
    }

    private static BoardMatrix make(ModuleKind... kinds) {
        Map<ModuleKind, Set<KnownFrom>> known = new LinkedHashMap<>();
        List.of(kinds).forEach(kind -> known.put(kind, Set.of(KnownFrom.ASKED)));
        return new MatrixMaker(RULES, board()).make(known, Progress.NONE);
    }

    static Board board() {
        Takes takes = new Takes(Set.of("S1", "S2", "S3", "S4"), Generation.DDR4, Set.of(Form.DIMM),
                Set.of(Buffering.UNBUFFERED), EccOutcome.REFUSED, Set.of(Voltage.ofMillivolts(1200)), Set.of(),
                Optional.empty(), Optional.of(Capacity.ofGiB(16)), Set.of(), Optional.empty(), Optional.empty(),
                OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
        List<Slot> slots = List.of(
                new Slot("Chips", "B", 1, SlotUse.SOLDERED, 0, 0, Optional.empty(),
                        Optional.of(ModuleKind.of(Generation.DDR4, Form.SOLDERED, Capacity.ofGiB(4)))),
                slot("S1", "A", 1), slot("S2", "A", 2), slot("S3", "B", 1), slot("S4", "B", 2),
                new Slot("X", "B", 3, SlotUse.DEAD, 0, 5, Optional.empty(), Optional.empty()));
        Fill fill = new Fill(List.of("S1", "S3", "S2", "S4"), List.of(
                new FillRow(1, List.of("S1"), Optional.empty()),
                new FillRow(1, List.of("S1", "S3"), Optional.empty()),
                new FillRow(1, List.of("S1", "S2", "S3", "S4"), Optional.empty())), Binding.REQUIRED, true, 1, false,
                false, Optional.empty());
        return new Board(new BoardId("mixed"), "Mixed", "One", List.of(), BoardForm.DESKTOP, 1, List.of(),
                List.of(new Channel("A", 1), new Channel("B", 1)), slots, List.of(takes), Optional.empty(),
                Optional.empty(), fill, Banks.NONE, List.of(),
                Interleave.FLEXIBLE, List.of(), List.of(), Source.document("Manual", "page 3"), Map.of());
    }

    private static Slot slot(String label, String channel, int position) {
        return new Slot(label, channel, position, SlotUse.SOCKET, 0, position, Optional.empty(), Optional.empty());
    }
}
