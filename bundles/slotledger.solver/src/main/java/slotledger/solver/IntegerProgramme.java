package slotledger.solver;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/** Whole-number variables and linear rows with whole-number factors; built row by row. */
public final class IntegerProgramme {

    /** No lower limit of a row. */
    public static final long NO_LOW = Long.MIN_VALUE;
    /** No upper limit of a row. */
    public static final long NO_HIGH = Long.MAX_VALUE;

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
            if (low > high) {
                throw new IllegalArgumentException(
                        "The smallest value (%d) of %s must not be above the largest (%d).".formatted(low, name, high));
            }
        }
    }

    /**
     * A row: low &lt;= sum &lt;= high.
     *
     * @param name for people who read the programme
     * @param low  {@link #NO_LOW} for none
     * @param sum  what is limited
     * @param high {@link #NO_HIGH} for none
     */
    public record Row(String name, long low, Linear sum, long high) {
        public Row {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(sum, "sum");
        }

        boolean holds(long[] values) {
            long value = sum.of(values);
            return value >= low && value <= high;
        }
    }

    private final List<Variable> variables = new ArrayList<>();
    private final List<Row> rows = new ArrayList<>();

    /** Adds a variable and returns its number. */
    public int variable(String name, long low, long high) {
        return variable(name, low, high, 0);
    }

    /** Adds a variable that a search should decide before those with a smaller number. */
    public int variable(String name, long low, long high, int first) {
        variables.add(new Variable(name, low, high, first));
        return variables.size() - 1;
    }

    /** Adds a variable that is 0 or 1. */
    public int choice(String name, int first) {
        return variable(name, 0, 1, first);
    }

    public void atMost(String name, Linear sum, long high) {
        rows.add(new Row(name, NO_LOW, sum, high));
    }

    public void atLeast(String name, Linear sum, long low) {
        rows.add(new Row(name, low, sum, NO_HIGH));
    }

    public void equal(String name, Linear sum, long value) {
        rows.add(new Row(name, value, sum, value));
    }

    public List<Variable> variables() {
        return Collections.unmodifiableList(variables);
    }

    public List<Row> rows() {
        return Collections.unmodifiableList(rows);
    }

    /** The name of the first limit these values break, computed exactly; empty where they keep all. */
    public Optional<String> broken(long[] values) {
        for (int i = 0; i < variables.size(); i++) {
            if (values[i] < variables.get(i).low() || values[i] > variables.get(i).high()) {
                return Optional.of(variables.get(i).name());
            }
        }
        return rows.stream().filter(row -> !row.holds(values)).map(Row::name).findFirst();
    }
}
