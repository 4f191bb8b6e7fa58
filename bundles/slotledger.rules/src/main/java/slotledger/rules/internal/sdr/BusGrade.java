package slotledger.rules.internal.sdr;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Component;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Processor;
import slotledger.model.board.RateLimit;
import slotledger.model.module.Generation;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.MissingFact;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** SDR memory runs at the rate of the board's bus; a slower module is no choice. */
@Component(service = MemoryRule.class)
@RuleId("sdr-bus-grade")
public final class BusGrade extends Rule {

    /** A bus whose rate nobody says. */
    private static final int UNSAID = 0;

    public BusGrade() {
        super(new RulePage(
                "sdr-bus-grade",
                "SDR memory runs at the rate of the board's bus, so that a module of a lower grade does not work.",
                new Source(Ground.MEMORY, "PC100 and PC133 SDRAM specifications", "", Optional.empty()),
                "Read the label: PC66, PC100 or PC133, also -10, -8 or -7.5 on the chips for nanoseconds. The bus of "
                        + "the board stands in its manual; the processor decides where it has several.",
                "Choose a module of the grade of the bus or a higher one. A PC133 module with CL3 works as PC100, "
                        + "mostly with CL2.",
                "A board runs its bus at 100 MT/s. A PC66 module (66 MT/s) does not start or is not stable; PC100 and "
                        + "PC133 modules both run at 100 MT/s."));
    }

    @Override
    public Set<Generation> families() {
        return Set.of(Generation.SDR);
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        int slowest = bus(situation, false);
        int fastest = bus(situation, true);
        if (fastest == UNSAID) {
            return;
        }
        boolean passed = false;
        boolean objected = false;
        List<Placed> modules = situation.described();
        for (int i = 0; i < modules.size(); i++) {
            Placed module = modules.get(i);
            if (module.way().generation() != Generation.SDR || !module.way().rates().isEmpty()) {
                continue;
            }
            Optional<Rate> rate = module.kind().rate();
            int grade = rate.isPresent() ? rate.get().megatransfers() + 1 : UNSAID;
            if (rate.isPresent() && grade >= fastest) {
                passed = true;
                continue;
            }
            objected = true;
            Weight weight = rate.isPresent() && grade < slowest ? Weight.BLOCKS : Weight.UNKNOWN;
            collector.report(weight, () -> objection(situation, module, slowest, fastest));
        }
        if (passed && !objected) {
            collector.report(Weight.PASSES, () -> Statement.of("All modules are as fast as the bus of the board.")
                    .by(situation.board().sourceOf(BoardFact.RATES)));
        }
    }

    private static Statement objection(Situation situation, Placed module, int slowest, int fastest) {
        String bus = slowest == fastest ? Rate.of(fastest).toString() : "%d or %s, depending on the processor"
                .formatted(slowest, Rate.of(fastest));
        String has = module.kind().rate().map(rate -> "is rated " + rate).orElse("has an unknown rating");
        return Statement.of("%s %s; the bus of the board runs at %s.".formatted(module, has, bus))
                .in(module)
                .by(situation.board().sourceOf(BoardFact.RATES))
                .missing(module.kind().rate().isEmpty() ? MissingFact.RATE : MissingFact.PROCESSOR);
    }

    /** The rate of the bus, or the lowest or highest possible one while the processor is unknown. */
    private static int bus(Situation situation, boolean highest) {
        int board = boardLimit(situation);
        Optional<Processor> known = situation.setup().processor();
        if (known.isPresent()) {
            return lower(board, rate(known.get()));
        }
        int processor = UNSAID;
        for (Processor each : situation.board().processors()) {
            int rate = rate(each);
            if (rate != UNSAID && (processor == UNSAID || (highest ? rate > processor : rate < processor))) {
                processor = rate;
            }
        }
        return lower(board, processor);
    }

    private static int boardLimit(Situation situation) {
        int limit = UNSAID;
        for (RateLimit each : situation.board().rateLimits()) {
            if (each.modulesPerChannel().isEmpty() && each.ranks().isEmpty() && each.buffering().isEmpty()
                    && each.voltage().isEmpty()) {
                limit = lower(limit, each.fastest().megatransfers());
            }
        }
        return limit;
    }

    private static int rate(Processor processor) {
        return processor.fastest().isPresent() ? processor.fastest().get().megatransfers() : UNSAID;
    }

    private static int lower(int one, int other) {
        return one == UNSAID ? other : other == UNSAID ? one : Math.min(one, other);
    }
}
