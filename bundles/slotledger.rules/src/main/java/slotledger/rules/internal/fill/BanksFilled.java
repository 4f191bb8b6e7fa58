package slotledger.rules.internal.fill;

import java.util.List;
import java.util.Set;
import java.util.function.Supplier;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Bank;
import slotledger.model.board.BoardFact;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The sockets of a bank are all filled or all empty, and banks are filled in their order. */
@Component(service = MemoryRule.class)
@RuleId("banks")
public final class BanksFilled extends Rule {

    /** Families whose own laws say more of banks. */
    private static final Set<Generation> WITH_LAWS_OF_BANKS = Set.of(Generation.FPM, Generation.EDO, Generation.RDRAM);

    public BanksFilled() {
        super(new RulePage(
                "banks",
                "Where a document names banks of sockets, each bank is whole or empty, its modules are of one "
                        + "capacity, and banks are filled in their order.",
                Source.document("PowerEdge SC1425 manual", "page 49: two or more modules in matched pairs"),
                "The manual names the banks and the sockets of each.",
                "Complete the bank, or take its modules out; move modules to the bank that comes first.",
                "Bank 1 is DIMM1_A and DIMM1_B, bank 2 is DIMM2_A and DIMM2_B. 2 x 1 GB fill bank 1; one of them in "
                        + "DIMM1_A and one in DIMM2_A leave two banks half empty."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        List<Bank> banks = situation.banks();
        if (banks.isEmpty() || situation.filled().isEmpty() || hasOwnLaw(situation)
                || !situation.matchingRows().isEmpty()) {
            return;
        }
        boolean objected = false;
        Bank gap = null;
        for (int i = 0; i < banks.size(); i++) {
            Bank bank = banks.get(i);
            int filled = filled(situation, bank);
            if (filled > 0 && filled < bank.slots().size()) {
                objected = true;
                report(situation, collector, Weight.BLOCKS, bank, () ->
                        "Bank %s has %d of %d sockets filled; it is whole or empty.".formatted(bank.name(), filled,
                                bank.slots().size()));
            } else if (filled > 0 && !isOfOneCapacity(situation, bank)) {
                objected = true;
                report(situation, collector, Weight.BLOCKS, bank, () ->
                        "The modules of bank %s are not of one capacity.".formatted(bank.name()));
            }
            if (filled > 0 && gap != null) {
                objected = true;
                Bank first = gap;
                report(situation, collector, departure(situation.board().fill().binding()), bank, () ->
                        "Bank %s is filled, bank %s before it is not.".formatted(bank.name(), first.name()));
            }
            gap = gap == null && filled == 0 ? bank : gap;
        }
        if (!objected) {
            collector.report(Weight.PASSES, () -> Statement.of("Every bank is whole or empty; the first are filled.")
                    .by(situation.board().sourceOf(BoardFact.BANKS)));
        }
    }

    private static boolean hasOwnLaw(Situation situation) {
        for (Generation generation : situation.generations()) {
            if (WITH_LAWS_OF_BANKS.contains(generation)) {
                return true;
            }
        }
        return false;
    }

    private static int filled(Situation situation, Bank bank) {
        int filled = 0;
        for (int i = 0; i < bank.slots().size(); i++) {
            filled += situation.filled().contains(bank.slots().get(i)) ? 1 : 0;
        }
        return filled;
    }

    private static boolean isOfOneCapacity(Situation situation, Bank bank) {
        Capacity first = null;
        for (int i = 0; i < bank.slots().size(); i++) {
            SlotContent content = situation.setup().population().in(bank.slots().get(i));
            if (content instanceof SlotContent.Holds holds) {
                if (first != null && !first.equals(holds.kind().capacity())) {
                    return false;
                }
                first = holds.kind().capacity();
            }
        }
        return true;
    }

    private static void report(
            Situation situation, Collector collector, Weight weight, Bank bank, Supplier<String> sentence) {
        collector.report(weight, () -> Statement.of(sentence.get())
                .in(bank.slots())
                .by(situation.board().sourceOf(BoardFact.BANKS)));
    }
}
