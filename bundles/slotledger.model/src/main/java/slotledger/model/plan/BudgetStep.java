package slotledger.model.plan;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.AssetTag;
import slotledger.model.unit.Money;

/**
 * What another budget would buy: the smallest budget that brings so many weighted machines on target.
 *
 * @param budget     the other budget
 * @param figures    of the best plan with it
 * @param gained     machines that are on target then and aren't by the plan; where several are alike, the first of them
 * @param lost       machines that aren't on target then and are by the plan; where several are alike, the last of them
 * @param isSmallest whether it is proven that no smaller budget does as much
 */
public record BudgetStep(
        Money budget, Figures figures, List<AssetTag> gained, List<AssetTag> lost, boolean isSmallest) {

    public BudgetStep {
        Objects.requireNonNull(budget, "budget");
        Objects.requireNonNull(figures, "figures");
        gained = List.copyOf(gained);
        lost = List.copyOf(lost);
    }
}
