package slotledger.rules;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slotledger.model.board.Bank;
import slotledger.model.board.Board;
import slotledger.model.board.FillRow;
import slotledger.model.board.Slot;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;

/**
 * Populations that show whether a module kind belongs into a socket. A module alone tells nothing where banks are
 * filled as a whole, where other sockets come first, or where no socket may be empty.
 */
public final class Tryouts {

    private Tryouts() {
    }

    /**
     * The usual ways to have the kind in a socket, fewest modules first: alone, its bank, its bank and those before,
     * all sockets up to it in the board's order, every printed row with it, all sockets. Sockets not filled are empty,
     * or hold what the board wants in an empty socket. Population and modules of the setup don't matter.
     */
    public static List<Population> of(Setup setup, String socket, ModuleKind kind) {
        Set<Set<String>> choices = new LinkedHashSet<>();
        choices.add(Set.of(socket));
        Set<String> banks = new LinkedHashSet<>();
        for (Bank bank : setup.board().banks().list()) {
            banks.addAll(bank.slots());
            if (bank.slots().contains(socket)) {
                choices.add(Set.copyOf(bank.slots()));
                choices.add(Set.copyOf(banks));
            }
        }
        List<String> order = setup.board().fill().order();
        if (order.contains(socket)) {
            choices.add(Set.copyOf(order.subList(0, order.indexOf(socket) + 1)));
        }
        for (FillRow row : setup.board().fill().table()) {
            if (row.processors() == setup.processors() && row.slots().contains(socket)) {
                choices.add(Set.copyOf(row.slots()));
            }
        }
        choices.add(Set.copyOf(sockets(setup)));
        List<Population> populations = new ArrayList<>();
        choices.stream().sorted((one, other) -> Integer.compare(one.size(), other.size()))
                .forEach(choice -> populations.add(population(setup, choice, kind)));
        return populations;
    }

    /** The kind in these sockets and nothing but what the board wants in the others. */
    public static Population population(Setup setup, Collection<String> filled, ModuleKind kind) {
        Map<String, SlotContent> contents = new LinkedHashMap<>(Population.empty(setup.board()).contents());
        SlotContent wanted = SlotContent.of(kind);
        SlotContent blank = setup.board().fill().blank().<SlotContent>map(SlotContent::of).orElse(SlotContent.EMPTY);
        for (String socket : sockets(setup)) {
            contents.put(socket, filled.contains(socket) ? wanted : blank);
        }
        return new Population(contents);
    }

    /** Labels of the sockets of installed processors, in the board's order. */
    public static List<String> sockets(Setup setup) {
        Board board = setup.board();
        return board.sockets().stream()
                .filter(slot -> board.channel(slot.channel()).processor() <= setup.processors())
                .map(Slot::label)
                .toList();
    }
}
