package slotledger.model.plan;

import java.util.Objects;
import slotledger.model.unit.Money;

/**
 * What a plan comes to, without its machines: enough to compare it with another.
 *
 * @param onTarget    machines on target after the work
 * @param weight      the same, weighted
 * @param weightBound no plan under the same terms has more weighted machines on target
 * @param payable     what a budget limits: goods and delivery, with tax where the policy means it so
 * @param cost        goods, delivery and labour
 * @param costBound   no plan under the same terms with as many weighted machines on target costs less
 */
public record Figures(long onTarget, long weight, long weightBound, Money payable, Money cost, Money costBound) {

    public Figures {
        Objects.requireNonNull(payable, "payable");
        Objects.requireNonNull(cost, "cost");
        Objects.requireNonNull(costBound, "costBound");
        if (weightBound < weight || costBound.compareTo(cost) > 0) {
            throw new IllegalArgumentException("The bounds must not be worse than the figures themselves.");
        }
    }

    /** The figures of a plan. */
    public static Figures of(Plan plan) {
        Optimality proof = plan.optimality();
        long onTarget = plan.machines().stream()
                .filter(machine -> machine.target().isPresent() && machine.obstacle().isEmpty())
                .count();
        return new Figures(onTarget, proof.weightOnTarget(), proof.weightBound(),
                plan.spending().againstBudget(plan.policy().buying().tax()), proof.cost(), proof.costBound());
    }

    /** Whether no plan under the same terms is better. */
    public boolean isProven() {
        return weightBound == weight && costBound.equals(cost);
    }
}
