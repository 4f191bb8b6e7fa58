package slotledger.planner.internal.milp;

import java.math.BigInteger;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;

/** Limits of all variables, made narrower by what was proven; the best values known lie inside. */
final class Box {

    final long[] low;
    final long[] high;

    Box(IntegerProgramme programme) {
        low = new long[programme.size()];
        high = new long[programme.size()];
        for (int variable = 0; variable < low.length; variable++) {
            low[variable] = programme.low(variable);
            high[variable] = programme.high(variable);
        }
    }

    private Box(Box other) {
        low = other.low.clone();
        high = other.high.clone();
    }

    Box copy() {
        return new Box(this);
    }

    boolean holds(long[] values) {
        for (int variable = 0; variable < values.length; variable++) {
            if (values[variable] < low[variable] || values[variable] > high[variable]) {
                return false;
            }
        }
        return true;
    }

    /** How many variables still have a choice. */
    int open() {
        int open = 0;
        for (int variable = 0; variable < low.length; variable++) {
            open += low[variable] < high[variable] ? 1 : 0;
        }
        return open;
    }

    /**
     * Narrows the limits so that values with a larger goal may fall out: a variable that would push the bound above
     * the goal by each of its units can't have many.
     */
    void narrow(Bound bound, long most) {
        Columns columns = bound.columns();
        BigInteger slack = bound.slack(most);
        if (slack.signum() < 0) {
            throw new IllegalStateException("The bound must not be above values that are known.");
        }
        long room = slack.bitLength() < Long.SIZE ? slack.longValue() : Long.MAX_VALUE;
        for (int group = 0; group < columns.groups; group++) {
            if (bound.isPlain(group)) {
                narrow(bound, group, room);
            }
        }
        for (int variable : columns.single) {
            long reduced = bound.reduced(variable);
            if (reduced > 0) {
                high[variable] = Math.min(high[variable], add(bound.low(variable), room / reduced));
            } else if (reduced < 0) {
                low[variable] = Math.max(low[variable], -add(-bound.high(variable), room / -reduced));
            }
        }
    }

    private void narrow(Bound bound, int group, long room) {
        Columns columns = bound.columns();
        int best = bound.best(group);
        long next = Long.MAX_VALUE;
        for (int i = columns.firstMember[group]; i < columns.firstMember[group + 1]; i++) {
            int variable = columns.members[i];
            if (bound.high(variable) == 0) {
                continue;
            }
            long over = bound.reduced(variable) - bound.reduced(best);
            if (variable != best) {
                next = Math.min(next, over);
            }
            if (over > 0) {
                high[variable] = Math.min(high[variable], room / over);
            }
        }
        if (next > 0) {
            low[best] = Math.max(low[best], columns.total[group] - room / next);
        }
    }

    /** Narrows the limits to what a row allows while all others in it stay inside theirs. */
    void keep(Row row) {
        try {
            if (row.low() != IntegerProgramme.NO_LOW) {
                raise(row, 1, row.low());
            }
            if (row.high() != IntegerProgramme.NO_HIGH) {
                raise(row, -1, Math.negateExact(row.high()));
            }
        } catch (ArithmeticException e) {
            // Numbers too large to reason with: the limits stay as wide as they are.
        }
    }

    /** Narrows the limits to sign * sum &gt;= least. */
    private void raise(Row row, int sign, long least) {
        long[] most = {0};
        row.sum().forEach((variable, factor) -> most[0] = Math.addExact(most[0],
                Math.multiplyExact(sign * factor, sign * factor > 0 ? high[variable] : low[variable])));
        long spare = Math.subtractExact(most[0], least);
        row.sum().forEach((variable, factor) -> {
            long steps = Math.floorDiv(spare, Math.abs(factor));
            if (sign * factor > 0) {
                low[variable] = Math.max(low[variable], Math.subtractExact(high[variable], steps));
            } else {
                high[variable] = Math.min(high[variable], Math.addExact(low[variable], steps));
            }
        });
    }

    private static long add(long one, long other) {
        long sum = one + other;
        return ((one ^ sum) & (other ^ sum)) < 0 ? Long.MAX_VALUE : sum;
    }
}
