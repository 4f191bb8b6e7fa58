package slotledger.catalog.internal.resolve;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slotledger.catalog.internal.match.Names;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.board.SlotUse;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Form;
import slotledger.model.observed.ObservedSlot;
import slotledger.model.unit.Capacity;

/**
 * What an inventory lists of one machine, sorted by what is known of its place.
 *
 * @param soldered said to be soldered
 * @param placed   by printed label of the board
 * @param loose    something, in a slot nobody can tell
 * @param shifted  whether the inventory was taken to count slots from 0 where the board counts from 1
 */
record Listing(
        List<ObservedSlot> soldered, Map<String, ObservedSlot> placed, List<ObservedSlot> loose, boolean shifted) {

    /** "System Board Memory", "onboard", "on board", "soldered", "built-in" */
    private static final Pattern SOLDERED =
            Pattern.compile("systemboard.*|motherboard.*|onboard.*|soldered.*|builtin.*");

    static Listing of(List<ObservedSlot> slots, Board board) {
        List<ObservedSlot> soldered = new ArrayList<>();
        List<ObservedSlot> sockets = new ArrayList<>();
        slots.forEach(slot -> (isSoldered(slot, board) ? soldered : sockets).add(slot));
        List<ObservedSlot> named = sockets.stream().filter(Listing::isNamed).toList();
        // Columns for slots a machine doesn't have stay empty; they mustn't keep the others from their places.
        List<ObservedSlot> filled = named.stream().filter(slot -> !slot.content().isEmpty()).toList();
        boolean countsFromZero = named.stream().anyMatch(slot -> nameOf(slot).matches(".*?(?<![0-9])0+"));
        return assign(soldered, sockets, named, board)
                .or(() -> countsFromZero ? Optional.empty() : assign(soldered, sockets, filled, board))
                .orElseGet(() -> new Listing(soldered, Map.of(), occupied(sockets), false));
    }

    private static Optional<Listing> assign(
            List<ObservedSlot> soldered, List<ObservedSlot> sockets, List<ObservedSlot> named, Board board) {
        List<Slot> slots = board.slots().stream().filter(slot -> slot.use() != SlotUse.SOLDERED).toList();
        // "Slot 1" may be the soldered memory's line where nothing else speaks of it.
        boolean onlyPrinted = slots.size() < board.slots().size() && occupied(soldered).isEmpty();
        return SlotLabels.map(named.stream().map(Listing::nameOf).toList(), slots, onlyPrinted).map(mapping -> {
            Map<String, ObservedSlot> placed = new LinkedHashMap<>();
            List<ObservedSlot> loose = new ArrayList<>(sockets);
            for (int i = 0; i < named.size(); i++) {
                placed.put(mapping.labels().get(i), named.get(i));
                removeSame(loose, named.get(i));
            }
            return new Listing(soldered, placed, occupied(loose), mapping.shifted());
        });
    }

    private static void removeSame(List<ObservedSlot> slots, ObservedSlot slot) {
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i) == slot) {
                slots.remove(i);
                return;
            }
        }
    }

    private static List<ObservedSlot> occupied(List<ObservedSlot> slots) {
        return slots.stream().filter(slot -> !slot.content().isEmpty()).toList();
    }

    private static boolean isNamed(ObservedSlot slot) {
        return !nameOf(slot).isBlank();
    }

    private static String nameOf(ObservedSlot slot) {
        return slot.label().orElse("");
    }

    private static boolean isSoldered(ObservedSlot slot, Board board) {
        String name = Names.normalised(nameOf(slot));
        return slot.content().module().flatMap(kind -> kind.form()).equals(Optional.of(Form.SOLDERED))
                || SOLDERED.matcher(name).matches()
                || board.slots().stream()
                        .filter(known -> known.use() == SlotUse.SOLDERED)
                        .anyMatch(known -> Names.normalised(known.label()).equals(name));
    }

    /** Whether anything at all is said to be in a slot. */
    boolean holdsAnything() {
        return Stream.of(loose, soldered, placed.values())
                .flatMap(Collection::stream)
                .anyMatch(slot -> !slot.content().isEmpty());
    }

    /** Whether memory, or something that may be memory, is said to be in a slot. */
    boolean holdsMemory() {
        return Stream.of(loose, soldered, placed.values()).flatMap(Collection::stream).anyMatch(Listing::isMemory);
    }

    /** What is in slots nobody can tell, without the fillers. */
    List<ObservedSlot> looseMemory() {
        return loose.stream().filter(Listing::isMemory).toList();
    }

    /** Fillers in slots nobody can tell. */
    List<ObservedSlot> looseFillers() {
        return loose.stream().filter(slot -> !isMemory(slot)).toList();
    }

    /** Labels of the slots that hold memory, or something that may be memory. */
    Set<String> placedMemory() {
        return placed.entrySet().stream()
                .filter(entry -> isMemory(entry.getValue()))
                .map(Map.Entry::getKey)
                .collect(Collectors.toSet());
    }

    private static boolean isMemory(ObservedSlot slot) {
        return !slot.content().isEmpty() && !(slot.content() instanceof SlotContent.Filled);
    }

    static Capacity sum(Iterable<ObservedSlot> slots) {
        Capacity sum = Capacity.NONE;
        for (ObservedSlot slot : slots) {
            sum = sum.plus(slot.content().capacity());
        }
        return sum;
    }
}
