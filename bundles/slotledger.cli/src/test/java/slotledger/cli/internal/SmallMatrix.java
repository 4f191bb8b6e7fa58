package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import slotledger.model.board.Banks;
import slotledger.model.board.Board;
import slotledger.model.board.BoardForm;
import slotledger.model.board.BoardId;
import slotledger.model.board.Channel;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.Fill;
import slotledger.model.board.Interleave;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.board.Takes;
import slotledger.model.matrix.BoardMatrix;
import slotledger.model.matrix.BoardMatrix.Cell;
import slotledger.model.matrix.BoardMatrix.Column;
import slotledger.model.matrix.BoardMatrix.Row;
import slotledger.model.matrix.KnownFrom;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.ChannelMode;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;

/** A made-up board with soldered memory, a dead connector and some sockets; three modules, one of each kind of end. */
final class SmallMatrix {

    private static final Source MANUAL = Source.document("Manual", "page 3");

    private SmallMatrix() {
    }

    static BoardMatrix of(String... sockets) {
        Board board = board(sockets);
        List<Column> columns = new ArrayList<>();
        board.slots().forEach(slot -> columns.add(new Column(Optional.of(slot))));
        columns.add(new Column(Optional.empty()));
        ModuleKind plain = ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(8)).with(Rate.of(2400));
        return new BoardMatrix(board, columns, List.of(
                row(ModuleKind.of(Generation.DDR3, Form.DIMM, Capacity.ofGiB(4)), Set.of(KnownFrom.FLEET), columns,
                        Optional.of(reason("generation", Weight.BLOCKS, Optional.empty()))),
                row(plain.with(ErrorCheck.NONE), Set.of(KnownFrom.OFFER, KnownFrom.SHELF), columns, Optional.empty()),
                row(plain, Set.of(KnownFrom.FLEET), columns,
                        Optional.of(reason("ecc", Weight.UNKNOWN, Optional.of(MissingFact.ERROR_CHECK))))));
    }

    static Reason reason(String rule, Weight weight, Optional<MissingFact> missing) {
        Reason finer = new Reason("look-alike", Weight.CAUTION, "Its notch sits elsewhere.", List.of(), MANUAL, "",
                List.of(), Optional.empty());
        return new Reason(rule, weight, "The module in slot S1 is of " + rule + " something.", List.of("S1"), MANUAL,
                missing.map(MissingFact::cheapestWay).orElse("Use another one."), List.of(finer), missing);
    }

    private static Row row(ModuleKind kind, Set<KnownFrom> from, List<Column> columns, Optional<Reason> why) {
        List<String> all = columns.stream().filter(column -> column.isOpen() && column.slot().isPresent())
                .map(Column::name).toList();
        List<Optional<Cell>> cells = new ArrayList<>();
        for (Column column : columns) {
            if (column.isOpen()) {
                Verdict verdict = new Verdict(why.map(Reason::weight).orElse(Weight.PASSES), runs(kind.capacity()),
                        List.of(why.orElse(reason("form", Weight.PASSES, Optional.empty()))));
                cells.add(Optional.of(
                        new Cell(column.slot().map(slot -> List.of(slot.label())).orElse(all), verdict, why)));
            } else {
                cells.add(Optional.empty());
            }
        }
        return new Row(kind, from, cells);
    }

    private static Operation runs(Capacity total) {
        return new Operation(total, total, total, new ChannelMode(1, total, Capacity.NONE),
                Optional.of(Rate.of(2400)), "", Bandwidth.NONE, false);
    }

    private static Board board(String... sockets) {
        List<Slot> slots = new ArrayList<>();
        slots.add(new Slot("Chips", "A", 1, SlotUse.SOLDERED, 0, 0, Optional.empty(),
                Optional.of(ModuleKind.of(Generation.DDR4, Form.SOLDERED, Capacity.ofGiB(4)))));
        slots.add(new Slot("X", "A", 2, SlotUse.DEAD, 0, 1, Optional.empty(), Optional.empty()));
        for (String socket : sockets) {
            slots.add(new Slot(socket, "A", 3, SlotUse.SOCKET, 1, slots.size(), Optional.empty(), Optional.empty()));
        }
        Takes takes = new Takes(Set.of(), Generation.DDR4, Set.of(Form.DIMM), Set.of(), EccOutcome.UNKNOWN, Set.of(),
                Set.of(), Optional.empty(), Optional.empty(), Set.of(), Optional.empty(), Optional.empty(),
                OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(), Optional.empty());
        return new Board(new BoardId("tarn-210"), "Tarn", "210", List.of(), BoardForm.SERVER, 1, List.of(),
                List.of(new Channel("A", 1)), slots, List.of(takes), Optional.empty(), Optional.empty(), Fill.ANY,
                Banks.NONE, List.of(), Interleave.UNKNOWN, List.of(), List.of(), MANUAL, Map.of());
    }
}
