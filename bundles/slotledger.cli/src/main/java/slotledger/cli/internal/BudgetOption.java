package slotledger.cli.internal;

import java.math.BigDecimal;
import java.util.Optional;
import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.app.Survey;
import slotledger.model.trade.Policy;
import slotledger.model.unit.Money;

/** A budget that holds for one run, in place of that of the policy. */
final class BudgetOption {

    @Option(
            names = "--budget",
            paramLabel = "AMOUNT",
            description = "Budget for goods and delivery instead of that of the policy, such as 5000 or 4999.50, in "
                    + "the currency of the policy; with tax only where the policy says so.")
    private BigDecimal amount;

    /** Whether one is given. */
    boolean isGiven() {
        return amount != null;
    }

    /** The survey with this budget; unchanged where none is given or there is no policy to change. */
    Survey in(Survey survey) throws DeskException {
        if (amount == null || survey.policy().isEmpty()) {
            return survey;
        }
        Policy policy = survey.policy().get();
        int digits = policy.currency().getDefaultFractionDigits();
        if (amount.signum() < 0 || amount.stripTrailingZeros().scale() > digits) {
            throw new DeskException(Trouble.INPUT, "The budget %s must be zero or more, with at most %d digits after "
                    .formatted(amount.toPlainString(), digits) + "the point.");
        }
        return survey.with(policy.withBudget(Optional.of(Money.of(amount, policy.currency()))));
    }
}
