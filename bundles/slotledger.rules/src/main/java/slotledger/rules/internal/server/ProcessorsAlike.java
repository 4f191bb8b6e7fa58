package slotledger.rules.internal.server;

import java.util.Arrays;
import java.util.List;
import org.osgi.service.component.annotations.Component;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.kit.Slots;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** All installed processors hold the same modules. */
@Component(service = MemoryRule.class)
@RuleId("processors-alike")
public final class ProcessorsAlike extends Rule {

    public ProcessorsAlike() {
        super(new RulePage(
                "processors-alike",
                "All installed processors hold the same modules, not only the same total.",
                Source.document(
                        "Lenovo ThinkSystem SR630 V3 User Guide; PowerEdge FC430 Owner's Manual, page 56",
                        "the memory population is identical between processors"),
                "Write down the modules of each processor by size; the board's map says which slot belongs to which.",
                "Exchange modules between the processors until both lists are the same.",
                "Processor 1 holds 4 x 16 GB and processor 2 holds 2 x 32 GB: 64 GB each, but four channels beside "
                        + "two. 2 x 16 GB and 1 x 32 GB for each are alike."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        int processors = situation.setup().processors();
        if (processors == 1 || situation.hasUnread()) {
            return;
        }
        long[] first = capacities(situation, 1);
        for (int processor = 2; processor <= processors; processor++) {
            long[] other = capacities(situation, processor);
            if (!Arrays.equals(first, other) && sum(first) == sum(other)) {
                int number = processor;
                collector.report(Weight.CAUTION, () -> Statement.of(
                                "Processor 1 holds %s; processor %d holds %s: the same total in other modules."
                                        .formatted(text(situation, 1), number, text(situation, number)))
                        .in(situation.filled()));
                return;
            }
        }
    }

    private static long[] capacities(Situation situation, int processor) {
        List<Placed> modules = situation.modules();
        long[] found = new long[modules.size()];
        int count = 0;
        for (int i = 0; i < modules.size(); i++) {
            if (modules.get(i).processor() == processor) {
                found[count++] = modules.get(i).kind().capacity().kibibytes();
            }
        }
        long[] exact = Arrays.copyOf(found, count);
        Arrays.sort(exact);
        return exact;
    }

    private static long sum(long[] capacities) {
        long sum = 0;
        for (long each : capacities) {
            sum += each;
        }
        return sum;
    }

    private static String text(Situation situation, int processor) {
        return Slots.byCapacity(situation.modules().stream()
                .filter(module -> module.processor() == processor)
                .toList());
    }
}
