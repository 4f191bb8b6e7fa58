package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.FillRow;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.board.Slot;
import slotledger.rules.Setup;

/**
 * Which sets of sockets are tried, first ones first. A guide for the search only: whether a set is allowed is what
 * the rules say.
 *
 * @param sockets  labels of the sockets of the processors installed: those of the fill order first, then by bank, then
 *                 by place in their channel
 * @param patterns sets of sockets: each first part of the order, each row of the fill table, each bank alone and with
 *                 those before it, each first part of the sets for memory kept back, each socket alone
 * @param banks    labels of the sockets of each bank; empty where not every socket is in one
 */
public record SlotOrder(List<String> sockets, List<List<String>> patterns, List<List<String>> banks) {

    public SlotOrder {
        sockets = List.copyOf(sockets);
        patterns = patterns.stream().map(List::copyOf).toList();
        banks = banks.stream().map(List::copyOf).toList();
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
        List<List<String>> banks = banks(board, sockets);
        patterns.addAll(banks);
        addOneAfterTheOther(banks, sockets, patterns);
        addOneAfterTheOther(setsKeptBack(setup, sockets), sockets, patterns);
        sockets.forEach(socket -> patterns.add(List.of(socket)));
        return new SlotOrder(sockets, List.copyOf(patterns), banks);
    }

    /** Each first part of a list of groups. */
    private static void addOneAfterTheOther(
            List<List<String>> groups, List<String> sockets, Set<List<String>> patterns) {
        Set<String> filled = new HashSet<>();
        for (List<String> group : groups) {
            filled.addAll(group);
            patterns.add(sockets.stream().filter(filled::contains).toList());
        }
    }

    /** The sets that are filled together where memory is kept back against errors. */
    private static List<List<String>> setsKeptBack(Setup setup, List<String> sockets) {
        return setup.board().terms(setup.redundancy()).map(RedundancyTerms::sets).orElse(List.of()).stream()
                .filter(set -> set.processors() == setup.processors() && sockets.containsAll(set.slots()))
                .map(RedundancyTerms.FillSet::slots)
                .toList();
    }

    private static List<List<String>> banks(Board board, List<String> sockets) {
        List<List<String>> banks = board.banks().list().stream()
                .map(Bank::slots)
                .filter(sockets::containsAll)
                .toList();
        return banks.stream().mapToInt(List::size).sum() == sockets.size() ? banks : List.of();
    }

    private static List<String> sockets(Setup setup) {
        Board board = setup.board();
        List<Slot> slots = new ArrayList<>(board.sockets().stream()
                .filter(slot -> board.channel(slot.channel()).processor() <= setup.processors())
                .toList());
        List<String> order = board.fill().order();
        slots.sort(Comparator
                .comparingInt((Slot slot) -> order.contains(slot.label()) ? order.indexOf(slot.label()) : order.size())
                .thenComparingInt(slot -> bank(board, slot.label()))
                .thenComparingInt(Slot::position));
        return slots.stream().map(Slot::label).toList();
    }

    /** The place of the slot's bank among all; the same for slots of no bank. */
    private static int bank(Board board, String label) {
        List<Bank> banks = board.banks().list();
        return banks.stream().filter(bank -> bank.slots().contains(label)).findFirst().map(banks::indexOf)
                .orElse(banks.size());
    }
}
