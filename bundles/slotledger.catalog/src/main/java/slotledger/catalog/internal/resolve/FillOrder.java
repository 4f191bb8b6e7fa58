package slotledger.catalog.internal.resolve;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import slotledger.model.board.Board;
import slotledger.model.board.FillRow;
import slotledger.model.board.Redundancy;
import slotledger.model.board.Slot;

/** The sockets of a board that work with so many processors, in the order a careful person fills them. */
final class FillOrder {

    private FillOrder() {
    }

    /** Sockets of the installed processors, in the document's order. */
    static List<String> usable(Board board, int processors) {
        return board.sockets().stream()
                .filter(slot -> board.channel(slot.channel()).processor() <= processors)
                .map(Slot::label)
                .toList();
    }

    /** The fewest processors with which so many sockets work; all of them where even that is too few. */
    static int processorsFor(Board board, int modules) {
        int processors = 1;
        while (processors < board.processorSockets() && usable(board, processors).size() < modules) {
            processors++;
        }
        return processors;
    }

    /**
     * The free sockets, first to be filled first.
     *
     * @param taken      sockets that hold something already
     * @param modules    how many more modules there are
     * @param redundancy whether sets for memory that is kept back come before order and table
     */
    static List<String> free(Board board, int processors, Set<String> taken, int modules, Redundancy redundancy) {
        Set<String> order = new LinkedHashSet<>();
        board.terms(redundancy).stream()
                .flatMap(terms -> terms.sets().stream())
                .filter(set -> set.processors() == processors)
                .forEach(set -> order.addAll(set.slots()));
        board.fill().table().stream()
                .filter(row -> row.processors() == processors && row.slots().size() == taken.size() + modules)
                .filter(row -> row.slots().containsAll(taken))
                .findFirst()
                .map(FillRow::slots)
                .ifPresent(order::addAll);
        order.addAll(board.fill().order());
        board.banks().list().forEach(bank -> order.addAll(bank.slots()));
        List<String> usable = usable(board, processors);
        order.addAll(usable);
        List<String> free = new ArrayList<>(order);
        free.retainAll(usable);
        free.removeAll(taken);
        return free;
    }
}
