package slotledger.planner.internal.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;

/** What one opening takes and gives, by number of kind; machines with the same changes share it. */
final class Swap {

    private final int[] takes;
    private final int[] gives;
    private final List<List<String>> takenTo;
    private final List<List<String>> givenFrom;

    private Swap(Map<Integer, List<String>> takes, Map<Integer, List<String>> gives) {
        this.takes = takes.keySet().stream().mapToInt(Integer::intValue).toArray();
        this.gives = gives.keySet().stream().mapToInt(Integer::intValue).toArray();
        this.takenTo = List.copyOf(takes.values());
        this.givenFrom = List.copyOf(gives.values());
    }

    /** Numbers kinds not seen before. What could not be read is given to nobody. */
    static Swap of(SlotChanges changes, Map<Piece, Integer> numbers) {
        return new Swap(slots(changes.in(), numbers), slots(changes.out(), numbers));
    }

    private static Map<Integer, List<String>> slots(Map<String, SlotContent> contents, Map<Piece, Integer> numbers) {
        Map<Integer, List<String>> slots = new LinkedHashMap<>();
        contents.forEach((slot, content) -> content.piece().ifPresent(piece -> {
            Integer known = numbers.putIfAbsent(piece, numbers.size());
            slots.computeIfAbsent(known == null ? numbers.size() - 1 : known, unused -> new ArrayList<>()).add(slot);
        }));
        return slots;
    }

    /** How many kinds come in. */
    int takes() {
        return takes.length;
    }

    int take(int number) {
        return takes[number];
    }

    int taken(int number) {
        return takenTo.get(number).size();
    }

    /** The slots one kind goes into. */
    List<String> takenTo(int number) {
        return takenTo.get(number);
    }

    /** How many kinds go out. */
    int gives() {
        return gives.length;
    }

    int give(int number) {
        return gives[number];
    }

    int given(int number) {
        return givenFrom.get(number).size();
    }

    /** Which of its gives comes out of a slot; -1 for what nobody can use. */
    int givenFrom(String slot) {
        for (int number = 0; number < gives.length; number++) {
            if (givenFrom.get(number).contains(slot)) {
                return number;
            }
        }
        return -1;
    }
}
