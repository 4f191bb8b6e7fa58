package slotledger.rules.spi;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.board.Board;
import slotledger.model.board.FillRow;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.board.Takes;
import slotledger.model.module.Generation;

/**
 * What can be worked out of a board once, whatever its population.
 *
 * <p>A way is a largest possible choice among what the board takes in which no socket is spoken of twice: alternatives
 * for the same sockets exclude each other, descriptions of different sockets hold together.
 */
final class Layout {

    final Board board;
    final Slot[] slots;
    final Set<String> labels;
    final int[] channelOf;
    final int[] processorOf;
    final List<Way> ways;
    final BitSet described = new BitSet();
    private final List<List<String>> orders;
    private final List<List<FillRow>> rows;
    private final List<List<BitSet>> rowSlots = new ArrayList<>();

    /** What each slot takes, by slot index, and the generations among it. */
    record Way(List<Optional<Takes>> takes, Set<Generation> generations) {
    }

    Layout(Board board) {
        this.board = board;
        slots = board.slots().toArray(Slot[]::new);
        labels = board.slots().stream().map(Slot::label).collect(Collectors.toUnmodifiableSet());
        channelOf = new int[slots.length];
        processorOf = new int[slots.length];
        Map<String, Integer> channels = new HashMap<>();
        board.channels().forEach(channel -> channels.put(channel.name(), channels.size()));
        for (int i = 0; i < slots.length; i++) {
            channelOf[i] = channels.get(slots[i].channel());
            processorOf[i] = board.channels().get(channelOf[i]).processor();
        }
        ways = ways();
        orders = new ArrayList<>();
        rows = new ArrayList<>();
        for (int processors = 1; processors <= board.processorSockets(); processors++) {
            int installed = processors;
            orders.add(board.fill().order().stream().filter(label -> processorOf(label) <= installed).toList());
            rows.add(board.fill().table().stream().filter(row -> row.processors() == installed).toList());
            rowSlots.add(rows.get(processors - 1).stream().map(this::indexes).toList());
        }
    }

    /** The order of filling, only slots of installed processors. */
    List<String> order(int processors) {
        return orders.get(processors - 1);
    }

    List<FillRow> rows(int processors) {
        return rows.get(processors - 1);
    }

    /** The slots of each printed row by their index, in the order of the rows. */
    List<BitSet> rowSlots(int processors) {
        return rowSlots.get(processors - 1);
    }

    private BitSet indexes(FillRow row) {
        BitSet indexes = new BitSet();
        for (int i = 0; i < slots.length; i++) {
            indexes.set(i, row.slots().contains(slots[i].label()));
        }
        return indexes;
    }

    private int processorOf(String label) {
        return board.channel(board.slot(label).channel()).processor();
    }

    private List<Way> ways() {
        List<BitSet> covers = new ArrayList<>();
        for (Takes takes : board.takes()) {
            BitSet cover = new BitSet();
            for (int i = 0; i < slots.length; i++) {
                if (slots[i].use() == SlotUse.SOCKET && takes.holdsFor(slots[i].label())) {
                    cover.set(i);
                }
            }
            covers.add(cover);
            described.or(cover);
        }
        List<Way> found = new ArrayList<>();
        choose(0, new BitSet(), covers, found);
        return List.copyOf(found);
    }

    private void choose(int next, BitSet chosen, List<BitSet> covers, List<Way> found) {
        if (next == covers.size()) {
            if (isLargest(chosen, covers)) {
                found.add(way(chosen));
            }
            return;
        }
        if (chosen.stream().noneMatch(other -> covers.get(other).intersects(covers.get(next)))) {
            BitSet with = (BitSet) chosen.clone();
            with.set(next);
            choose(next + 1, with, covers, found);
        }
        boolean alternatives = false;
        for (int other = 0; other < covers.size(); other++) {
            alternatives |= other != next && covers.get(other).intersects(covers.get(next));
        }
        if (alternatives) {
            choose(next + 1, chosen, covers, found);
        }
    }

    private static boolean isLargest(BitSet chosen, List<BitSet> covers) {
        for (int i = 0; i < covers.size(); i++) {
            BitSet cover = covers.get(i);
            if (!chosen.get(i) && chosen.stream().noneMatch(other -> covers.get(other).intersects(cover))) {
                return false;
            }
        }
        return true;
    }

    private Way way(BitSet chosen) {
        List<Optional<Takes>> takes = new ArrayList<>();
        Set<Generation> generations = EnumSet.noneOf(Generation.class);
        chosen.stream().forEach(i -> generations.add(board.takes().get(i).generation()));
        for (Slot slot : slots) {
            takes.add(chosen.stream()
                    .mapToObj(board.takes()::get)
                    .filter(each -> each.holdsFor(slot.label()))
                    .reduce((first, second) -> first.slots().isEmpty() ? second : first));
        }
        return new Way(List.copyOf(takes), generations);
    }
}
