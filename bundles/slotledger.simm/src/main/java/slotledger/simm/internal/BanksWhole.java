package slotledger.simm.internal;

import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** Each bank is filled as a whole, or empty. */
@Component(service = MemoryRule.class)
@RuleId("simm-banks-whole")
public final class BanksWhole extends SimmRule {

    public BanksWhole() {
        super(new RulePage(
                "simm-banks-whole",
                "Each bank is filled as a whole or left empty; half a bank is not seen, or stops the start.",
                MAC_TEXT,
                "Count the modules of each bank that the manual names.",
                "Fill the bank, or empty it.",
                "A 486 board has 2 banks of 4 sockets. 4 x 4 MB in bank 0 are 16 MB; 2 more modules in bank 1 do "
                        + "nothing, 4 more make 32 MB."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        if (!isUsed(situation)) {
            return;
        }
        BankPlan plan = BankPlan.of(situation);
        if (!plan.isKnown()) {
            count(situation, plan, collector);
            return;
        }
        boolean objected = false;
        for (int bank = 0; bank < plan.count(); bank++) {
            int filled = plan.filled(bank, situation);
            if (filled > 0 && filled < plan.sockets(bank)) {
                objected = true;
                int each = bank;
                collector.report(Weight.BLOCKS, () -> Statement.of(
                                "Bank %s holds %s in %d sockets (%s): a bank is filled as a whole or empty.".formatted(
                                        plan.name(each), BankSize.modules(filled), plan.sockets(each),
                                        String.join(", ", plan.labels(each))))
                        .in(plan.labels(each))
                        .by(situation.board().sourceOf(BoardFact.BANKS)));
            }
        }
        if (!objected) {
            collector.report(Weight.PASSES, () -> Statement.of("Each bank is filled as a whole or empty.")
                    .by(situation.board().sourceOf(BoardFact.BANKS)));
        }
    }

    /** Where nobody knows which sockets make a bank, the number of modules can still be no whole number of banks. */
    private static void count(Situation situation, BankPlan plan, Collector collector) {
        int filled = situation.filled().size();
        if (plan.size() > 1 && plan.sockets() % plan.size() == 0 && filled % plan.size() != 0) {
            collector.report(Weight.BLOCKS, () -> Statement.of(
                            "%s are no whole number of banks of %d.".formatted(BankSize.modules(filled), plan.size()))
                    .in(situation.filled())
                    .by(situation.board().sourceOf(BoardFact.BANKS)));
        }
    }
}
