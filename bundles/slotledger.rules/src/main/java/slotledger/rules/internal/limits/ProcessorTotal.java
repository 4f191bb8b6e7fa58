package slotledger.rules.internal.limits;

import java.util.List;
import java.util.Optional;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Processor;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** The modules together are no larger than the processors address. */
@Component(service = MemoryRule.class)
@RuleId("processor-total")
public final class ProcessorTotal extends Rule {

    public ProcessorTotal() {
        super(new RulePage(
                "processor-total",
                "All modules together are no larger than is allowed with the installed processors.",
                Source.of(Ground.PRACTICE),
                "Ask the running machine which processor is installed; the board's manual or the processor maker's "
                        + "data sheet gives the largest memory with it. Above it nobody says that the machine starts, "
                        + "so that it blocks; a chipset that starts and sees less is said to address less.",
                "Plan less, or change the processor first.",
                "A processor is made for 16 GB. On a board for 32 GB, 2 x 8 GB are allowed with it and 4 x 8 GB are "
                        + "not."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Optional<Processor> installed = situation.setup().processor();
        Weight worst = null;
        Weight least = null;
        List<Processor> possible = installed.isPresent() ? List.of(installed.get()) : situation.board().processors();
        for (Processor processor : possible) {
            if (processor.largestTotal().isPresent()) {
                Capacity most = processor.largestTotal().get().times(situation.setup().processors());
                Weight weight = most.atLeast(situation.total()) ? Weight.PASSES : Weight.BLOCKS;
                worst = worst == null ? weight : worst.worse(weight);
                least = least == null || weight.compareTo(least) < 0 ? weight : least;
            } else {
                least = Weight.PASSES;
            }
        }
        if (worst == null) {
            return;
        }
        Weight weight = worst == least ? worst : Weight.UNKNOWN;
        collector.report(weight, () -> Statement.of(sentence(weight, situation, installed))
                .by(situation.board().sourceOf(BoardFact.PROCESSORS))
                .missing(MissingFact.PROCESSOR));
    }

    private static String sentence(Weight weight, Situation situation, Optional<Processor> installed) {
        String total = situation.total().toString();
        if (weight == Weight.UNKNOWN) {
            return "It is not known which processor is installed, and not all that fit are made for %s."
                    .formatted(total);
        }
        String who = installed.map(Processor::name).orElse("every processor that fits");
        return weight == Weight.PASSES
                ? "%s in all are within what the processor is made for (%s).".formatted(total, who)
                : "%s in all are more than the processor is made for (%s).".formatted(total, who);
    }
}
