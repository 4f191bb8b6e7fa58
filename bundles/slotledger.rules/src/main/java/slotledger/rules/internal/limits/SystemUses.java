package slotledger.rules.internal.limits;

import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.internal.capacity.Counting;
import slotledger.rules.internal.capacity.SystemLimit;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The operating system uses all memory. */
@Component(service = MemoryRule.class)
@RuleId("operating-system")
public final class SystemUses extends Rule {

    public SystemUses() {
        super(new RulePage(
                "operating-system",
                "An operating system uses memory up to a limit of its edition; what is above is lost.",
                Source.document(
                        "Microsoft, Memory Limits for Windows and Windows Server Releases",
                        "Physical Memory Limits"),
                "See the edition and whether it is 32-bit or 64-bit in the system settings.",
                "Change the edition, or install the 64-bit edition, before adding memory; else plan no more than "
                        + "the limit.",
                "Windows 7 Professional 32-bit uses 4 GB. With 8 GB installed at least 4 GB are lost; the 64-bit "
                        + "edition uses up to 192 GB."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Optional<String> system = situation.setup().operatingSystem();
        if (system.isEmpty()) {
            return;
        }
        SystemLimit limit = SystemLimit.of(system.get());
        if (limit.most().isEmpty()) {
            return;
        }
        Capacity total = Counting.offered(situation);
        Capacity most = limit.most().get();
        Capacity least = limit.least().orElse(most);
        if (!most.atLeast(total)) {
            collector.report(Weight.LOWERS, () -> Statement.of("%s uses %s of the %s %s."
                    .formatted(system.get(), most, total, where(situation))));
        } else if (!least.atLeast(total)) {
            collector.report(Weight.CAUTION, () -> Statement.of(
                            ("%s does not say which edition it is, 32-bit or 64-bit among others; some use only %s "
                                    + "of the %s %s.")
                                    .formatted(system.get(), least, total, where(situation)))
                    .advising(page().howToTell()));
        } else {
            collector.report(Weight.PASSES, () -> Statement.of("%s can use all %s.".formatted(system.get(), total)));
        }
    }

    private static String where(Situation situation) {
        return Counting.offered(situation).equals(situation.total()) ? "installed" : "it is offered";
    }
}
