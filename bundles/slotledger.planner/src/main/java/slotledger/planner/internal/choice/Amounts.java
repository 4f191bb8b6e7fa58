package slotledger.planner.internal.choice;

import java.util.AbstractMap;
import java.util.AbstractSet;
import java.util.Arrays;
import java.util.Iterator;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * How many there are of each kind, by number of the kind in the stock; kinds of which there are none are left out. A
 * fleet has a million of these, so that they are kept small.
 */
public final class Amounts extends AbstractMap<Integer, Integer> {

    /** Does something with each kind. */
    @FunctionalInterface
    public interface Visitor {
        void visit(int kind, int count);
    }

    static final Amounts NONE = new Amounts(new int[0], new int[0]);

    private final int[] kinds;
    private final int[] counts;

    private Amounts(int[] kinds, int[] counts) {
        this.kinds = kinds;
        this.counts = counts;
    }

    /** Those of a map; its kinds in ascending order. */
    public static Amounts of(Map<Integer, Integer> amounts) {
        int[] kinds = amounts.keySet().stream().mapToInt(Integer::intValue).sorted()
                .filter(kind -> amounts.get(kind) > 0).toArray();
        return new Amounts(kinds, Arrays.stream(kinds).map(amounts::get).toArray());
    }

    /** Counts above zero, where each has the number of its kind beside it; the kinds must not occur twice. */
    static Amounts ofPositive(int[] counts, int[] numbers) {
        int[] places = IntStream.range(0, counts.length).filter(place -> counts[place] > 0).toArray();
        for (int i = 1; i < places.length; i++) {
            int place = places[i];
            int to = i;
            for (; to > 0 && numbers[places[to - 1]] > numbers[place]; to--) {
                places[to] = places[to - 1];
            }
            places[to] = place;
        }
        return places.length == 0 ? NONE : new Amounts(
                IntStream.of(places).map(place -> numbers[place]).toArray(),
                IntStream.of(places).map(place -> counts[place]).toArray());
    }

    /** How many of a kind. */
    public int count(int kind) {
        int place = Arrays.binarySearch(kinds, kind);
        return place < 0 ? 0 : counts[place];
    }

    /** The so-manieth of the kinds, in the order of their numbers. */
    public int kindAt(int place) {
        return kinds[place];
    }

    /** How many of that kind. */
    public int countAt(int place) {
        return counts[place];
    }

    /** Visits every kind, in the order of their numbers. */
    public void visit(Visitor visitor) {
        for (int i = 0; i < kinds.length; i++) {
            visitor.visit(kinds[i], counts[i]);
        }
    }

    @Override
    public int size() {
        return kinds.length;
    }

    @Override
    public Integer get(Object kind) {
        int count = kind instanceof Integer number ? count(number) : 0;
        return count == 0 ? null : count;
    }

    @Override
    public boolean containsKey(Object kind) {
        return get(kind) != null;
    }

    @Override
    public Set<Entry<Integer, Integer>> entrySet() {
        return new AbstractSet<>() {
            @Override
            public Iterator<Entry<Integer, Integer>> iterator() {
                return IntStream.range(0, kinds.length)
                        .<Entry<Integer, Integer>>mapToObj(i -> Map.entry(kinds[i], counts[i]))
                        .iterator();
            }

            @Override
            public int size() {
                return kinds.length;
            }
        };
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Amounts amounts
                ? Arrays.equals(kinds, amounts.kinds) && Arrays.equals(counts, amounts.counts)
                : super.equals(other);
    }

    /** That of a map with these entries. */
    @Override
    public int hashCode() {
        int hash = 0;
        for (int i = 0; i < kinds.length; i++) {
            hash += kinds[i] ^ counts[i];
        }
        return hash;
    }
}
