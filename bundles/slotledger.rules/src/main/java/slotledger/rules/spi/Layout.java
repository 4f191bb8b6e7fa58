package slotledger.rules.spi;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collections;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.Fill;
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

    /**
     * What each slot takes, by slot index, the generations among it, and how sockets are filled: for all of them, and
     * where there are several generations for each alone, by the number of installed processors less one.
     */
    record Way(List<Optional<Takes>> takes, Set<Generation> generations, List<Filling> all,
            Map<Generation, List<Filling>> alone) {
        /** A generation of null means that several are in use, or that it doesn't matter. */
        Filling filling(int processors, Generation used) {
            return (used == null || alone.isEmpty() ? all : alone.get(used)).get(processors - 1);
        }
    }

    /**
     * What the document says of filling, without what concerns absent processors or sockets that stay empty.
     *
     * @param order    the order of filling
     * @param rows     printed rows
     * @param rowSlots the slots of each row by their index
     * @param banks    banks, in their order
     */
    record Filling(List<String> order, List<FillRow> rows, List<BitSet> rowSlots, List<Bank> banks) {
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
    }

    private BitSet indexes(FillRow row) {
        BitSet indexes = new BitSet();
        for (int i = 0; i < slots.length; i++) {
            indexes.set(i, row.slots().contains(slots[i].label()));
        }
        return indexes;
    }

    private Filling filling(int processors, BitSet empty) {
        Set<String> usable = new HashSet<>();
        for (int i = 0; i < slots.length; i++) {
            if (processorOf[i] <= processors && !empty.get(i)) {
                usable.add(slots[i].label());
            }
        }
        Fill fill = board.fill();
        List<FillRow> rows = fill.table().stream()
                .filter(row -> row.processors() == processors && usable.containsAll(row.slots()))
                .toList();
        return new Filling(fill.order().stream().filter(usable::contains).toList(), rows,
                rows.stream().map(this::indexes).toList(),
                board.banks().list().stream().filter(bank -> usable.containsAll(bank.slots())).toList());
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
        BitSet empty = (BitSet) described.clone();
        for (int i = 0; i < slots.length; i++) {
            Slot slot = slots[i];
            takes.add(chosen.stream()
                    .mapToObj(board.takes()::get)
                    .filter(each -> each.holdsFor(slot.label()))
                    .reduce((first, second) -> first.slots().isEmpty() ? second : first));
            if (takes.get(i).isPresent()) {
                empty.clear(i);
            }
        }
        Map<Generation, List<Filling>> alone = new EnumMap<>(Generation.class);
        if (generations.size() > 1) {
            generations.forEach(used -> alone.put(used, fillings(withoutOthers(takes, empty, used))));
        }
        return new Way(List.copyOf(takes), Collections.unmodifiableSet(generations), fillings(empty), alone);
    }

    /** A board with sockets of two generations runs one of them, so that those of the other stay empty too. */
    private static BitSet withoutOthers(List<Optional<Takes>> takes, BitSet empty, Generation used) {
        BitSet more = (BitSet) empty.clone();
        for (int i = 0; i < takes.size(); i++) {
            if (takes.get(i).isPresent() && takes.get(i).get().generation() != used) {
                more.set(i);
            }
        }
        return more;
    }

    private List<Filling> fillings(BitSet empty) {
        List<Filling> fillings = new ArrayList<>();
        for (int processors = 1; processors <= board.processorSockets(); processors++) {
            fillings.add(filling(processors, empty));
        }
        return List.copyOf(fillings);
    }
}
