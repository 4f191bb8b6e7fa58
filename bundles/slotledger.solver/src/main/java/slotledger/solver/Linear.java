package slotledger.solver;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.BiConsumer;

/** A sum of whole multiples of variables, built term by term; terms of one variable are added up. */
public final class Linear {

    private final TreeMap<Integer, Long> factors = new TreeMap<>();

    /** Adds a multiple of a variable. */
    public Linear add(int variable, long factor) {
        factors.merge(variable, factor, Math::addExact);
        if (factors.get(variable) == 0) {
            factors.remove(variable);
        }
        return this;
    }

    /** Adds a multiple of another sum. */
    public Linear add(Linear other, long factor) {
        other.factors.forEach((variable, own) -> add(variable, Math.multiplyExact(own, factor)));
        return this;
    }

    public boolean isEmpty() {
        return factors.isEmpty();
    }

    public int size() {
        return factors.size();
    }

    /** Visits the terms in the order of their variables. */
    public void forEach(BiConsumer<Integer, Long> visitor) {
        factors.forEach(visitor);
    }

    /** The sum for these values, exactly; fails where it doesn't fit into a long. */
    public long of(long[] values) {
        long sum = 0;
        for (Map.Entry<Integer, Long> term : factors.entrySet()) {
            sum = Math.addExact(sum, Math.multiplyExact(values[term.getKey()], term.getValue()));
        }
        return sum;
    }
}
