package slotledger.solver;

/**
 * Values of all variables, with a proof of how good they are.
 *
 * @param values by number of variable; keep every row exactly
 * @param value  of the goal
 * @param bound  no values that keep all rows have a smaller goal
 */
public record MilpSolution(long[] values, long value, long bound) {

    public MilpSolution {
        values = values.clone();
        if (bound > value) {
            throw new IllegalArgumentException("The bound (%d) must not be above the value (%d)."
                    .formatted(bound, value));
        }
    }

    @Override
    public long[] values() {
        return values.clone();
    }

    public boolean isProven() {
        return bound == value;
    }
}
