package slotledger.simm.internal;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Slot;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.AccessTime;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The modules of a bank are identical. */
@Component(service = MemoryRule.class)
@RuleId("simm-bank-alike")
public final class AlikeInBank extends SimmRule {

    public AlikeInBank() {
        super(new RulePage(
                "simm-bank-alike",
                "The modules of a bank are identical: capacity, access time, FPM or EDO, parity.",
                BANK_TEXT,
                "Compare the labels: 4x36-60 is 4 M words of 36 bits (with parity) at 60 ns. Where there is none, "
                        + "compare number and print of the chips.",
                "Put four, two or eight of one kind into a bank; another bank may hold another kind.",
                "3 x 4 MB and 1 x 1 MB in one bank of 4 are seen as 4 x 1 MB at best. 4 x 4 MB in bank 0 and 4 x "
                        + "1 MB in bank 1 are 20 MB."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        BankPlan plan = BankPlan.of(situation);
        if (!plan.isKnown()) {
            return;
        }
        List<Placed> modules = situation.described();
        boolean any = false;
        boolean objected = false;
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            int bank = plan.of(indexOf(situation, module.slot()));
            for (int j = 0; j < i && bank != BankPlan.NONE; j++) {
                Placed one = modules.get(j);
                if (plan.of(indexOf(situation, one.slot())) != bank) {
                    continue;
                }
                any = true;
                Weight weight = compare(one.kind(), module.kind());
                if (weight != Weight.PASSES) {
                    objected = true;
                    collector.report(weight, () -> objection(situation, plan.name(bank), one, module));
                }
            }
        }
        if (any && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of("The modules of each bank are identical.")
                    .by(situation.board().sourceOf(BoardFact.BANKS)));
        }
    }

    private static int indexOf(Situation situation, Slot slot) {
        List<Slot> slots = situation.board().slots();
        for (int i = 0; i < slots.size(); i++) {
            if (slots.get(i) == slot) {
                return i;
            }
        }
        throw new IllegalStateException("The slot %s must be one of the board's.".formatted(slot.label()));
    }

    /** Kinds that are equal count as identical, whatever is unknown of both. */
    private static Weight compare(ModuleKind one, ModuleKind other) {
        if (one.equals(other)) {
            return Weight.PASSES;
        }
        if (!one.capacity().equals(other.capacity()) || differ(one.generation(), other.generation())
                || differ(one.accessTime(), other.accessTime()) || differ(one.errorCheck(), other.errorCheck())) {
            return Weight.BLOCKS;
        }
        return missing(one, other).isEmpty() ? Weight.PASSES : Weight.UNKNOWN;
    }

    private static boolean differ(Optional<?> one, Optional<?> other) {
        return one.isPresent() && other.isPresent() && !one.equals(other);
    }

    private static Optional<MissingFact> missing(ModuleKind one, ModuleKind other) {
        return one.generation().isEmpty() || other.generation().isEmpty() ? Optional.of(MissingFact.GENERATION)
                : one.accessTime().isEmpty() || other.accessTime().isEmpty() ? Optional.of(MissingFact.ACCESS_TIME)
                : one.errorCheck().isEmpty() || other.errorCheck().isEmpty() ? Optional.of(MissingFact.ERROR_CHECK)
                : Optional.empty();
    }

    private static Statement objection(Situation situation, String bank, Placed one, Placed other) {
        String difference = difference(one.kind(), other.kind());
        String sentence = difference.isEmpty()
                ? "It is not known whether the modules in %s and %s of bank %s are identical.".formatted(one.label(),
                        other.label(), bank)
                : "The modules in %s and %s of bank %s are not identical: %s.".formatted(one.label(), other.label(),
                        bank, difference);
        Statement statement = Statement.of(sentence)
                .in(List.of(one.label(), other.label()))
                .by(situation.board().sourceOf(BoardFact.BANKS));
        if (!difference.isEmpty()) {
            return statement;
        }
        MissingFact fact = missing(one.kind(), other.kind()).orElseThrow();
        return fact == MissingFact.GENERATION
                ? statement.missing(fact).advising(TELL_FPM_FROM_EDO)
                : statement.missing(fact);
    }

    /** The first known difference in words; empty where there is none. */
    private static String difference(ModuleKind one, ModuleKind other) {
        if (!one.capacity().equals(other.capacity())) {
            return one.capacity() + " and " + other.capacity();
        }
        return differ(one.generation(), other.generation()) ? words(one.generation().map(Generation::text),
                        other.generation().map(Generation::text))
                : differ(one.accessTime(), other.accessTime()) ? words(one.accessTime().map(AccessTime::toString),
                        other.accessTime().map(AccessTime::toString))
                : differ(one.errorCheck(), other.errorCheck()) ? words(one.errorCheck().map(Parity::text),
                        other.errorCheck().map(Parity::text))
                : "";
    }

    private static String words(Optional<String> one, Optional<String> other) {
        return one.orElseThrow() + " and " + other.orElseThrow();
    }
}
