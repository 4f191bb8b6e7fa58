package slotledger.solver;

import java.util.AbstractList;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.IntFunction;

/**
 * Whole-number variables and linear rows with whole-number factors; built row by row. It holds millions of variables:
 * their limits lie in plain arrays, and a name is made only when somebody asks for it.
 */
public final class IntegerProgramme {

    /** No lower limit of a row. */
    public static final long NO_LOW = Long.MIN_VALUE;
    /** No upper limit of a row. */
    public static final long NO_HIGH = Long.MAX_VALUE;

    private static final int FIRST_ROOM = 64;

    /**
     * A variable.
     *
     * @param name  for people who read the programme
     * @param low   smallest value
     * @param high  largest value
     * @param first how early a search should decide it; larger is earlier
     */
    public record Variable(String name, long low, long high, int first) {
        public Variable {
            Objects.requireNonNull(name, "name");
        }
    }

    /**
     * A row: low &lt;= sum &lt;= high.
     *
     * @param name  for people who read the programme
     * @param low   {@link #NO_LOW} for none
     * @param sum   what is limited
     * @param high  {@link #NO_HIGH} for none
     * @param joins whether it joins what may be independent without it; a search may then look at the parts one by one
     */
    public record Row(String name, long low, Linear sum, long high, boolean joins) {
        public Row {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(sum, "sum");
        }

        /** A row of one part. */
        public Row(String name, long low, Linear sum, long high) {
            this(name, low, sum, high, false);
        }

        boolean holds(long[] values) {
            long value = sum.of(values);
            return value >= low && value <= high;
        }
    }

    private final TreeMap<Integer, IntFunction<String>> names = new TreeMap<>();
    private final List<Row> rows = new ArrayList<>();
    private long[] lows = new long[FIRST_ROOM];
    private long[] highs = new long[FIRST_ROOM];
    private int[] firsts = new int[FIRST_ROOM];
    private int size;

    /** Adds a variable and returns its number. */
    public int variable(String name, long low, long high) {
        return variable(name, low, high, 0);
    }

    /** Adds a variable that a search should decide before those with a smaller number. */
    public int variable(String name, long low, long high, int first) {
        Objects.requireNonNull(name, "name");
        return variables(1, low, high, first, unused -> name);
    }

    /** Adds a variable that is 0 or 1. */
    public int choice(String name, int first) {
        return variable(name, 0, 1, first);
    }

    /**
     * Adds many variables with the same limits at once.
     *
     * @param count how many
     * @param first how early a search should decide them; larger is earlier
     * @param name  of the variable with this place among them, from 0; made only when it is asked for
     * @return the number of the first; the others follow
     */
    public int variables(int count, long low, long high, int first, IntFunction<String> name) {
        if (low > high) {
            throw new IllegalArgumentException("The smallest value (%d) of %s must not be above the largest (%d)."
                    .formatted(low, count == 0 ? "a variable" : name.apply(0), high));
        }
        int from = size;
        if (count > 0) {
            names.put(from, name);
        }
        size = Math.addExact(size, count);
        makeRoom();
        Arrays.fill(lows, from, size, low);
        Arrays.fill(highs, from, size, high);
        Arrays.fill(firsts, from, size, first);
        return from;
    }

    private void makeRoom() {
        if (size > lows.length) {
            int room = Math.max(size, lows.length + (lows.length >> 1));
            lows = Arrays.copyOf(lows, room);
            highs = Arrays.copyOf(highs, room);
            firsts = Arrays.copyOf(firsts, room);
        }
    }

    /** Adds a row: sum &lt;= high. */
    public void atMost(String name, Linear sum, long high) {
        rows.add(new Row(name, NO_LOW, sum, high));
    }

    /** Adds a row: sum &gt;= low. */
    public void atLeast(String name, Linear sum, long low) {
        rows.add(new Row(name, low, sum, NO_HIGH));
    }

    /** Adds a row: sum &lt;= high, which joins what may be independent without it. */
    public void joinAtMost(String name, Linear sum, long high) {
        rows.add(new Row(name, NO_LOW, sum, high, true));
    }

    /** Adds a row: sum &gt;= low, which joins what may be independent without it. */
    public void joinAtLeast(String name, Linear sum, long low) {
        rows.add(new Row(name, low, sum, NO_HIGH, true));
    }

    /** Adds a row: sum = value. */
    public void equal(String name, Linear sum, long value) {
        rows.add(new Row(name, value, sum, value));
    }

    /** Number of variables. */
    public int size() {
        return size;
    }

    /** Smallest value of a variable. */
    public long low(int variable) {
        return lows[Objects.checkIndex(variable, size)];
    }

    /** Largest value of a variable. */
    public long high(int variable) {
        return highs[Objects.checkIndex(variable, size)];
    }

    /** How early a search should decide a variable; larger is earlier. */
    public int first(int variable) {
        return firsts[Objects.checkIndex(variable, size)];
    }

    public String name(int variable) {
        Map.Entry<Integer, IntFunction<String>> block = names.floorEntry(Objects.checkIndex(variable, size));
        return block.getValue().apply(variable - block.getKey());
    }

    /** The variables by number, made one by one as they are asked for. */
    public List<Variable> variables() {
        return new AbstractList<>() {
            @Override
            public Variable get(int variable) {
                return new Variable(name(variable), low(variable), high(variable), first(variable));
            }

            @Override
            public int size() {
                return size;
            }
        };
    }

    public List<Row> rows() {
        return Collections.unmodifiableList(rows);
    }

    /** The name of the first limit these values break, computed exactly; empty where they keep all. */
    public Optional<String> broken(long[] values) {
        for (int i = 0; i < size; i++) {
            if (values[i] < lows[i] || values[i] > highs[i]) {
                return Optional.of(name(i));
            }
        }
        return rows.stream().filter(row -> !row.holds(values)).map(Row::name).findFirst();
    }
}
