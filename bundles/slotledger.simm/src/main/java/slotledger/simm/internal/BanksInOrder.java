package slotledger.simm.internal;

import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Binding;
import slotledger.model.board.BoardFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The first bank is always filled, and the others in their order. */
@Component(service = MemoryRule.class)
@RuleId("simm-banks-in-order")
public final class BanksInOrder extends SimmRule {

    public BanksInOrder() {
        super(new RulePage(
                "simm-banks-in-order",
                "The first bank is always filled, and the others follow in order.",
                MAC_TEXT,
                "The manual calls it bank 0 or bank A; next to the sockets the number is often printed on the board.",
                "Move the modules to the banks that come first.",
                "Of 3 banks the modules go into 0, then 1, then 2. With bank 0 empty and bank 1 filled the machine "
                        + "does not start."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (!isUsed(situation)) {
            return;
        }
        BankPlan plan = BankPlan.of(situation);
        if (!plan.isOrdered()) {
            return;
        }
        int firstEmpty = -1;
        int late = -1;
        for (int bank = 0; bank < plan.count(); bank++) {
            boolean filled = plan.filled(bank, situation) > 0;
            if (!filled && firstEmpty < 0) {
                firstEmpty = bank;
            } else if (filled && firstEmpty >= 0 && late < 0) {
                late = bank;
            }
        }
        int gap = firstEmpty;
        int after = late;
        if (after < 0) {
            collector.report(Weight.PASSES, () -> Statement.of("The banks filled come first.")
                    .by(situation.board().sourceOf(BoardFact.BANKS)));
        } else {
            boolean first = gap == 0 && !hasSoldered(situation);
            boolean must = first || situation.board().fill().binding() == Binding.REQUIRED;
            collector.report(must ? Weight.BLOCKS : Weight.CAUTION, () -> Statement.of(first
                            ? "Bank %s is empty, but bank %s is filled: the first bank must be filled.".formatted(
                                    plan.name(gap), plan.name(after))
                            : "Bank %s is filled before bank %s.".formatted(plan.name(after), plan.name(gap)))
                    .in(plan.labels(gap))
                    .by(situation.board().sourceOf(BoardFact.BANKS)));
        }
    }

    /** Memory on the board takes the place of the first bank. */
    private static boolean hasSoldered(Situation situation) {
        for (Placed module : situation.modules()) {
            if (module.isSoldered()) {
                return true;
            }
        }
        return false;
    }
}
