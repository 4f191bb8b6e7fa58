package slotledger.model.plan;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Objects;
import slotledger.model.unit.Money;

/**
 * How far a plan can be from the best one, as proven.
 *
 * @param weightOnTarget weighted machines on target by this plan
 * @param weightBound    no plan has more weighted machines on target
 * @param cost           what this plan costs: goods, delivery and labour
 * @param costBound      no plan with as many weighted machines on target costs less, as the search says
 * @param weightSafe     the bound of weighted machines that exact arithmetic alone proves; never below the search's
 * @param costSafe       the bound of the cost that exact arithmetic alone proves; never above the search's
 * @param solver         which solver found it
 * @param limits         what the search left out, one sentence each
 * @param cut            whether the search was stopped early by the user
 */
public record Optimality(
        long weightOnTarget,
        long weightBound,
        Money cost,
        Money costBound,
        long weightSafe,
        Money costSafe,
        String solver,
        List<String> limits,
        boolean cut) {

    private static final int DIGITS = 6;

    public Optimality {
        Objects.requireNonNull(cost, "cost");
        Objects.requireNonNull(costBound, "costBound");
        Objects.requireNonNull(costSafe, "costSafe");
        Objects.requireNonNull(solver, "solver");
        limits = List.copyOf(limits);
        if (weightBound < weightOnTarget || costBound.compareTo(cost) > 0
                || weightSafe < weightBound || costSafe.compareTo(costBound) > 0) {
            throw new IllegalArgumentException("The bounds must not be worse than the plan itself.");
        }
    }

    /** With nothing proven by exact arithmetic but that a plan costs nothing at least. */
    public Optimality(
            long weightOnTarget,
            long weightBound,
            Money cost,
            Money costBound,
            String solver,
            List<String> limits,
            boolean cut) {
        this(weightOnTarget, weightBound, cost, costBound, weightBound, Money.zero(cost.currency()), solver, limits,
                cut);
    }

    /** Whether no plan within the stated limits is better. */
    public boolean isProven() {
        return weightBound == weightOnTarget && costBound.equals(cost);
    }

    /** The largest possible saving as a share of the cost, 0 to 1, rounded up at the sixth digit. */
    public BigDecimal costGap() {
        if (cost.isZero()) {
            return BigDecimal.ZERO;
        }
        return BigDecimal.valueOf(cost.minus(costBound).minor())
                .divide(BigDecimal.valueOf(cost.minor()), DIGITS, RoundingMode.UP);
    }
}
