package slotledger.planner.internal.order;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;

/** What one opening takes and gives, by number of kind; machines with the same changes share it. */
final class Swap {

    private static final int NOBODY = -1;

    private final Side in;
    private final Side out;

    /** One direction: the slots in their order, and the kinds in the order in which they are met. */
    private static final class Side {
        private final String[] slots;
        private final SlotContent[] contents;
        private final int[] kinds;
        private final int[][] places;
        private final int[] numberOfPlace;

        private Side(Map<String, SlotContent> changes, Map<Piece, Integer> numbers) {
            slots = changes.keySet().toArray(String[]::new);
            contents = changes.values().toArray(SlotContent[]::new);
            numberOfPlace = new int[slots.length];
            Map<Integer, Integer> met = new LinkedHashMap<>();
            for (int place = 0; place < slots.length; place++) {
                numberOfPlace[place] = number(contents[place], met, numbers);
            }
            kinds = met.keySet().stream().mapToInt(Integer::intValue).toArray();
            places = new int[kinds.length][0];
            for (int place = 0; place < slots.length; place++) {
                int number = numberOfPlace[place];
                if (number != NOBODY) {
                    places[number] = Arrays.copyOf(places[number], places[number].length + 1);
                    places[number][places[number].length - 1] = place;
                }
            }
        }

        private static int number(SlotContent content, Map<Integer, Integer> met, Map<Piece, Integer> numbers) {
            if (content.piece().isEmpty()) {
                return NOBODY;
            }
            Integer known = numbers.putIfAbsent(content.piece().get(), numbers.size());
            int kind = known == null ? numbers.size() - 1 : known;
            Integer number = met.putIfAbsent(kind, met.size());
            return number == null ? met.size() - 1 : number;
        }
    }

    private Swap(Side in, Side out) {
        this.in = in;
        this.out = out;
    }

    /** Numbers kinds not seen before. What could not be read is given to nobody. */
    static Swap of(SlotChanges changes, Map<Piece, Integer> numbers) {
        Side in = new Side(changes.in(), numbers);
        return new Swap(in, new Side(changes.out(), numbers));
    }

    /** How many kinds come in. */
    int takes() {
        return in.kinds.length;
    }

    int take(int number) {
        return in.kinds[number];
    }

    int taken(int number) {
        return in.places[number].length;
    }

    /** How many slots something enters. */
    int entries() {
        return in.slots.length;
    }

    String entry(int place) {
        return in.slots[place];
    }

    /** Which entry is the so-manieth of a kind that comes in. */
    int entryOf(int number, int count) {
        return in.places[number][count];
    }

    SlotContent entering(int place) {
        return in.contents[place];
    }

    /** How many kinds go out. */
    int gives() {
        return out.kinds.length;
    }

    int give(int number) {
        return out.kinds[number];
    }

    int given(int number) {
        return out.places[number].length;
    }

    /** How many slots something leaves for good. */
    int exits() {
        return out.slots.length;
    }

    String exit(int place) {
        return out.slots[place];
    }

    SlotContent leaving(int place) {
        return out.contents[place];
    }

    /** Which of its gives comes out of a slot, by the slot's place; -1 for what nobody can use. */
    int givenFrom(int place) {
        return out.numberOfPlace[place];
    }
}
