package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import slotledger.model.board.Board;
import slotledger.model.board.FillRow;
import slotledger.model.board.Slot;
import slotledger.rules.Setup;

/**
 * Which sets of sockets are tried, first ones first. A guide for the search only: whether a set is allowed is what
 * the rules say.
 *
 * @param sockets  labels of the sockets of the processors installed: those of the fill order first, then by place in
 *                 their channel
 * @param patterns sets of sockets: each first part of the order, each row of the fill table, each socket alone
 */
public record SlotOrder(List<String> sockets, List<List<String>> patterns) {

    public SlotOrder {
        sockets = List.copyOf(sockets);
        patterns = patterns.stream().map(List::copyOf).toList();
    }

    static SlotOrder of(Setup setup) {
        Board board = setup.board();
        List<String> sockets = sockets(setup);
        Set<List<String>> patterns = new LinkedHashSet<>();
        for (int count = 1; count <= sockets.size(); count++) {
            patterns.add(sockets.subList(0, count));
        }
        for (FillRow row : board.fill().table()) {
            if (row.processors() == setup.processors() && sockets.containsAll(row.slots())) {
                patterns.add(sockets.stream().filter(row.slots()::contains).toList());
            }
        }
        sockets.forEach(socket -> patterns.add(List.of(socket)));
        return new SlotOrder(sockets, List.copyOf(patterns));
    }

    private static List<String> sockets(Setup setup) {
        Board board = setup.board();
        List<Slot> slots = new ArrayList<>(board.sockets().stream()
                .filter(slot -> board.channel(slot.channel()).processor() <= setup.processors())
                .toList());
        List<String> order = board.fill().order();
        slots.sort(Comparator
                .comparingInt((Slot slot) -> order.contains(slot.label()) ? order.indexOf(slot.label()) : order.size())
                .thenComparingInt(Slot::position));
        return slots.stream().map(Slot::label).toList();
    }
}
