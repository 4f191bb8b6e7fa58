package slotledger.bench;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
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
import slotledger.model.board.Processor;
import slotledger.model.board.RateLimit;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.board.Takes;
import slotledger.model.module.Buffering;
import slotledger.model.module.ChipSize;
import slotledger.model.module.ChipWidth;
import slotledger.model.module.ErrorCheck;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/** Invented boards with about as many facts as real documents give, and modules for them. */
final class RuleBoards {

    private static final Voltage V1_2 = Voltage.ofMillivolts(1200);

    private RuleBoards() {
    }

    /** A notebook with two sockets. */
    static Board notebook() {
        return board("kestrin-2", BoardForm.NOTEBOOK, 1, 2, 1, Form.SO_DIMM, Buffering.UNBUFFERED,
                new Fill(List.of("1A1", "1B1"), List.of(), Binding.RECOMMENDED, false, 1, false, false,
                        Optional.empty()));
    }

    /** A desktop with four sockets. */
    static Board desktop() {
        return board("orvane-4", BoardForm.DESKTOP, 1, 2, 2, Form.DIMM, Buffering.UNBUFFERED,
                new Fill(List.of("1A2", "1B2", "1A1", "1B1"), List.of(), Binding.RECOMMENDED, false, 1, true, false,
                        Optional.empty()));
    }

    /** A server with two processors of four channels: pairs over both processors, a printed row for each number. */
    static Board server() {
        List<FillRow> rows = new ArrayList<>();
        List<String> slots = new ArrayList<>();
        for (int position = 1; position <= 2; position++) {
            for (char channel = 'A'; channel <= 'D'; channel++) {
                slots.add("1" + channel + position);
                slots.add("2" + channel + position);
                rows.add(new FillRow(2, slots, Optional.of(Rate.of(position == 1 ? 2666 : 2400))));
            }
        }
        return board("dunmarsk-16", BoardForm.SERVER, 2, 4, 2, Form.DIMM, Buffering.REGISTERED,
                new Fill(slots, rows, Binding.REQUIRED, true, 2, false, false, Optional.empty()));
    }

    /** A module that goes into a board of these. */
    static ModuleKind module(Board board, int gibibytes, int ranks) {
        Takes takes = board.takes().get(0);
        boolean registered = takes.bufferings().contains(Buffering.REGISTERED);
        int chips = ranks * (registered ? 16 : 8);
        return ModuleKind.of(Generation.DDR4, takes.forms().iterator().next(), Capacity.ofGiB(gibibytes))
                .withRanks(ranks)
                .with(registered ? ChipWidth.X4 : ChipWidth.X8)
                .with(ChipSize.ofGbit(gibibytes * 8 / chips))
                .with(registered ? ErrorCheck.ECC : ErrorCheck.NONE)
                .with(registered ? Buffering.REGISTERED : Buffering.UNBUFFERED)
                .with(Rate.of(2666))
                .withCasLatency(19)
                .with(V1_2);
    }

    private static Board board(String id, BoardForm form, int processors, int channels, int sockets, Form module,
            Buffering buffering, Fill fill) {
        List<Channel> paths = new ArrayList<>();
        List<Slot> slots = new ArrayList<>();
        for (int processor = 1; processor <= processors; processor++) {
            for (int channel = 0; channel < channels; channel++) {
                String name = processor + Character.toString('A' + channel);
                paths.add(new Channel(name, processor));
                for (int position = 1; position <= sockets; position++) {
                    slots.add(new Slot(name + position, name, position, SlotUse.SOCKET, channel, position,
                            Optional.empty(), Optional.empty()));
                }
            }
        }
        Takes takes = new Takes(Set.of(), Generation.DDR4, Set.of(module), Set.of(buffering),
                buffering == Buffering.REGISTERED ? EccOutcome.REQUIRED : EccOutcome.IGNORED, Set.of(V1_2), Set.of(),
                Optional.of(Capacity.ofGiB(4)), Optional.of(Capacity.ofGiB(64)),
                Set.of(ChipWidth.X4, ChipWidth.X8, ChipWidth.X16), Optional.empty(), Optional.of(ChipSize.ofGbit(16)),
                OptionalInt.of(4), OptionalInt.of(8), OptionalInt.empty(), Optional.empty(), Optional.empty());
        return new Board(new BoardId(id), "Invented", id, List.of(), form, processors,
                List.of(new Processor("Fast", List.of(), Optional.of(Rate.of(2666)), Optional.of(Capacity.ofGiB(1024))),
                        new Processor("Slow", List.of(), Optional.of(Rate.of(2400)),
                                Optional.of(Capacity.ofGiB(1024)))),
                paths, slots, List.of(takes), Optional.of(Capacity.ofGiB(64L * slots.size())), Optional.empty(), fill,
                Banks.NONE, List.of(), Interleave.FLEXIBLE, List.of(limit(1, 2666), limit(2, 2400)), List.of(),
                Source.of(Ground.PRACTICE), Map.of());
    }

    private static RateLimit limit(int modules, int rate) {
        return new RateLimit(OptionalInt.of(modules), OptionalInt.empty(), Optional.empty(), Optional.empty(),
                Rate.of(rate));
    }
}
