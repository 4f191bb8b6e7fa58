package slotledger.itest.workbench;

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
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;

/** Boards made up for the tests. */
final class SampleBoards {

    static final Board DESKTOP = board("tarn-420", "Tarn", "420 Tower", BoardForm.DESKTOP, List.of(
            socket("A1", "A", 1, 0, 0), socket("A2", "A", 2, 0, 1),
            socket("B1", "B", 1, 0, 2), socket("B2", "B", 2, 0, 3)), Form.DIMM);

    static final Board NOTEBOOK = board("tarn-n13", "Tarn", "N13", BoardForm.NOTEBOOK, List.of(
            new Slot("On board", "A", 1, SlotUse.SOLDERED, 0, 0, Optional.empty(),
                    Optional.of(kind(4, Form.SOLDERED))),
            socket("SO-DIMM 1", "B", 1, 0, 1)), Form.SO_DIMM);

    private SampleBoards() {
    }

    static ModuleKind kind(int gibibytes, Form form) {
        return ModuleKind.of(Generation.DDR4, form, Capacity.ofGiB(gibibytes)).with(Rate.of(2666)).withRanks(1);
    }

    private static Slot socket(String label, String channel, int position, int row, int column) {
        return new Slot(label, channel, position, SlotUse.SOCKET, row, column, Optional.empty(), Optional.empty());
    }

    private static Board board(String id, String maker, String model, BoardForm form, List<Slot> slots, Form takes) {
        List<Channel> channels = new ArrayList<>();
        slots.stream().map(Slot::channel).distinct().forEach(name -> channels.add(new Channel(name, 1)));
        Takes way = new Takes(Set.of(), Generation.DDR4, Set.of(takes), Set.of(), EccOutcome.UNKNOWN, Set.of(),
                Set.of(), Optional.empty(), Optional.of(Capacity.ofGiB(16)), Set.of(), Optional.empty(),
                Optional.empty(), OptionalInt.empty(), OptionalInt.empty(), OptionalInt.empty(), Optional.empty(),
                Optional.empty());
        return new Board(new BoardId(id), maker, model, List.of(), form, 1, List.of(), channels, slots, List.of(way),
                Optional.of(Capacity.ofGiB(64)), Optional.empty(), Fill.ANY, Banks.NONE, List.of(),
                Interleave.FLEXIBLE, List.of(), List.of(),
                Source.document("Tarn " + model + " board manual", "page 17"), Map.of());
    }
}
