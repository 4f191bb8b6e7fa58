package slotledger.solver;

import java.util.Arrays;

/**
 * A sum of whole multiples of variables, built term by term; terms of one variable are added up. Not for use by several
 * threads at once while it is built.
 */
public final class Linear {

    private static final int FIRST_ROOM = 4;
    private static final int INT_BITS = 32;

    /** Takes one term. */
    @FunctionalInterface
    public interface Visitor {
        void visit(int variable, long factor);
    }

    private int[] variables = new int[FIRST_ROOM];
    private long[] factors = new long[FIRST_ROOM];
    private int size;
    private boolean isTidy = true;

    /** Adds a multiple of a variable. */
    public Linear add(int variable, long factor) {
        if (factor != 0) {
            if (size == variables.length) {
                variables = Arrays.copyOf(variables, size * 2);
                factors = Arrays.copyOf(factors, size * 2);
            }
            isTidy &= size == 0 || variables[size - 1] < variable;
            variables[size] = variable;
            factors[size++] = factor;
        }
        return this;
    }

    /** Adds a multiple of another sum. */
    public Linear add(Linear other, long factor) {
        other.tidy();
        int terms = other.size;
        for (int i = 0; i < terms; i++) {
            add(other.variables[i], Math.multiplyExact(other.factors[i], factor));
        }
        return this;
    }

    public boolean isEmpty() {
        return size() == 0;
    }

    public int size() {
        tidy();
        return size;
    }

    /** The variable of a term; terms are in the order of their variables. */
    public int variable(int term) {
        tidy();
        return variables[term];
    }

    /** The factor of a term, never 0. */
    public long factor(int term) {
        tidy();
        return factors[term];
    }

    /** Visits the terms in the order of their variables. */
    public void forEach(Visitor visitor) {
        tidy();
        for (int i = 0; i < size; i++) {
            visitor.visit(variables[i], factors[i]);
        }
    }

    /** The sum for these values, exactly; fails where it doesn't fit into a long. */
    public long of(long[] values) {
        tidy();
        long sum = 0;
        for (int i = 0; i < size; i++) {
            sum = Math.addExact(sum, Math.multiplyExact(values[variables[i]], factors[i]));
        }
        return sum;
    }

    /** Puts the terms in order and adds up those of one variable. */
    private void tidy() {
        if (isTidy) {
            return;
        }
        long[] places = new long[size];
        for (int i = 0; i < size; i++) {
            places[i] = (long) variables[i] << INT_BITS | i;
        }
        Arrays.sort(places);
        int[] sorted = new int[size];
        long[] added = new long[size];
        int kept = 0;
        for (long place : places) {
            int variable = (int) (place >> INT_BITS);
            long factor = factors[(int) place];
            if (kept > 0 && sorted[kept - 1] == variable) {
                added[kept - 1] = Math.addExact(added[kept - 1], factor);
            } else {
                kept -= kept > 0 && added[kept - 1] == 0 ? 1 : 0;
                sorted[kept] = variable;
                added[kept++] = factor;
            }
        }
        kept -= kept > 0 && added[kept - 1] == 0 ? 1 : 0;
        variables = sorted;
        factors = added;
        size = kept;
        isTidy = true;
    }
}
