package slotledger.example;

import org.osgi.service.component.annotations.Component;
import slotledger.model.board.Board;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;
import slotledger.model.verdict.Weight;
import slotledger.rules.RulePage;
import slotledger.rules.kit.Rule;
import slotledger.rules.spi.Collector;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.spi.RuleId;
import slotledger.rules.spi.Situation;
import slotledger.rules.spi.Statement;

/** A machine below its largest total keeps a socket free. */
@Component(service = MemoryRule.class)
@RuleId("free-socket")
public final class FreeSocket extends Rule {

    public FreeSocket() {
        super(new RulePage(
                "free-socket",
                "A machine below its largest total best keeps a socket free.",
                Source.of(Ground.PRACTICE),
                "Count the sockets and the modules in them.",
                "Use fewer, larger modules.",
                "4 sockets hold 4 x 2 GB, the board takes 32 GB: the next upgrade throws a module away."));
    }

    @Override
    public void judge(Situation situation, Collector collector) {
        Board board = situation.board();
        if (board.largestTotal().isEmpty()) {
            return;
        }
        boolean free = situation.filled().size() < board.sockets().size();
        if (free || situation.total().atLeast(board.largestTotal().get())) {
            collector.report(Weight.PASSES, () -> Statement.of("It can grow, or is as large as it gets."));
        } else {
            collector.report(Weight.CAUTION, () -> Statement.of(
                            "All %d sockets are full with %s; the board takes %s.".formatted(board.sockets().size(),
                                    situation.total(), board.largestTotal().get()))
                    .in(situation.filled()));
        }
    }
}
