package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.List;
import slotledger.model.trade.Policy;
import slotledger.model.unit.Money;
import slotledger.planner.PlannerException;

/** All money of a policy must be in its own currency and not negative. */
final class Currencies {

    private Currencies() {
    }

    static void check(Policy policy) throws PlannerException {
        List<Money> amounts = new ArrayList<>(List.of(policy.perMachine(), policy.perModule()));
        policy.budget().ifPresent(amounts::add);
        amounts.addAll(policy.costCentreBudgets().values());
        for (Money amount : amounts) {
            if (!amount.currency().equals(policy.currency())) {
                throw new PlannerException("The policy counts in %s but has an amount of %s. Write all amounts in %s."
                        .formatted(policy.currency(), amount, policy.currency()));
            }
            if (amount.minor() < 0) {
                throw new PlannerException(
                        "The policy has an amount below zero (%s). Budgets and labour must be zero or more."
                                .formatted(amount));
            }
        }
    }
}
