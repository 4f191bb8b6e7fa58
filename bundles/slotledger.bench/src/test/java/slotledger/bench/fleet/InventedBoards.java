package slotledger.bench.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
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
import slotledger.model.module.ChipWidth;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;

/** Makes up boards with as many facts as good documents give, so that rules always know. */
final class InventedBoards {

    private static final Set<ChipWidth> WIDTHS = Set.of(ChipWidth.X4, ChipWidth.X8, ChipWidth.X16);
    private static final int SERVER_CHANNELS = 4;
    private static final int RANKS = 2;

    private final Technology technology;
    private final Random random;

    InventedBoards(Technology technology, Random random) {
        this.technology = technology;
        this.random = random;
    }

    Board make(int number) {
        boolean server = technology.isServer();
        int processors = server ? 2 : 1;
        int positions = server ? 2 : technology.computer() != BoardForm.DESKTOP || random.nextInt(3) == 0 ? 1 : 2;
        List<Channel> channels = channels(processors, server ? SERVER_CHANNELS : 2);
        List<Slot> slots = slots(channels, positions);
        Capacity largest = technology.unit().times(1L << (server ? 0 : random.nextInt(2) + 1));
        long room = (long) slots.size() / (random.nextInt(4) == 0 && slots.size() > 2 ? 2 : 1);
        int ranks = random.nextInt(6) == 0 ? 1 : RANKS;
        Rate fastest = technology.fastest();
        BoardId id = new BoardId("%s-%d".formatted(technology.name().toLowerCase().replace('_', '-'), number));
        Takes takes = new Takes(Set.of(), technology.generation(), Set.of(technology.form()),
                Set.of(technology.buffering()), server ? EccOutcome.REQUIRED : EccOutcome.IGNORED,
                Set.of(technology.voltage()), Set.of(), Optional.empty(), Optional.of(largest),
                random.nextInt(5) == 0 && !server ? Set.of(ChipWidth.X8) : WIDTHS, Optional.empty(),
                Optional.of(technology.largestChip()), OptionalInt.of(ranks), OptionalInt.of(RANKS * positions),
                OptionalInt.of(1), Optional.empty(), Optional.empty());
        return new Board(id, "Invented", id.toString(), List.of(), technology.computer(), processors,
                List.of(new Processor("Usual", List.of(), Optional.of(fastest), Optional.of(largest.times(room)))),
                channels, slots, List.of(takes), Optional.of(largest.times(room)), Optional.empty(),
                fill(slots, positions), Banks.NONE, List.of(), Interleave.FLEXIBLE,
                List.of(RateLimit.always(fastest)), List.of(), Source.of(Ground.PRACTICE), Map.of());
    }

    private static List<Channel> channels(int processors, int each) {
        List<Channel> channels = new ArrayList<>();
        for (int processor = 1; processor <= processors; processor++) {
            for (int channel = 0; channel < each; channel++) {
                channels.add(new Channel(processor + Character.toString('A' + channel), processor));
            }
        }
        return channels;
    }

    private static List<Slot> slots(List<Channel> channels, int positions) {
        List<Slot> slots = new ArrayList<>();
        for (int column = 0; column < channels.size(); column++) {
            for (int position = 1; position <= positions; position++) {
                String channel = channels.get(column).name();
                slots.add(new Slot(channel + position, channel, position, SlotUse.SOCKET, position - 1, column,
                        Optional.empty(), Optional.empty()));
            }
        }
        return slots;
    }

    /** One socket of each channel after the other; on servers in turns over both processors, by a printed table. */
    private Fill fill(List<Slot> slots, int positions) {
        List<String> order = new ArrayList<>();
        int channels = slots.size() / positions;
        for (int position = 0; position < positions; position++) {
            for (int i = 0; i < channels; i++) {
                int channel = technology.isServer() ? i / 2 + i % 2 * SERVER_CHANNELS : i;
                order.add(slots.get(channel * positions + position).label());
            }
        }
        if (!technology.isServer()) {
            return new Fill(order, List.of(), Binding.RECOMMENDED, false, 1, false, false, Optional.empty());
        }
        List<FillRow> rows = new ArrayList<>();
        for (int count = 2; count <= order.size(); count += 2) {
            rows.add(new FillRow(2, order.subList(0, count), Optional.empty()));
        }
        return new Fill(order, rows, Binding.REQUIRED, true, 2, false, false, Optional.empty());
    }
}
