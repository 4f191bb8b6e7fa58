package slotledger.planner.internal.choice;

import java.util.List;
import slotledger.model.machine.Population;
import slotledger.model.trade.Target;
import slotledger.planner.Targets;

/** Shows what is considered for the machines of a class before anything is dropped for being beaten. */
public final class Considered {

    private Considered() {
    }

    /** The populations that the rules allow and that are on target, each once. */
    public static List<Population> of(Stock stock, Options options) {
        Target target = options.group().target().orElseThrow();
        JudgedBoard board = options.board();
        Population now = options.group().now();
        ClassSockets sockets = new ClassSockets(stock, now, board.order().sockets(),
                options.group().setup().board().fill().blank(), options.fitting(), new boolean[stock.pieces().size()]);
        return RawPopulations.list(sockets, board.order(), target.capacity()).stream()
                .map(raw -> sockets.population(raw.codes()))
                .filter(after -> board.allows(now, after))
                .filter(after -> Targets.meets(target, board.setup(after), board.operate(after)))
                .toList();
    }
}
