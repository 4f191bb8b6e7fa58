package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import slotledger.model.machine.Population;
import slotledger.model.module.Filler;
import slotledger.model.module.Piece;
import slotledger.model.trade.Target;
import slotledger.model.verdict.Weight;
import slotledger.planner.Targets;

/** Tries populations for a machine that could not be helped, with kinds that might fit among them. */
public final class Trial {

    private final Options options;
    private final ClassSockets sockets;

    private Trial(Stock stock, Options options, Predicate<Piece> canBeHad) {
        this.options = options;
        List<Integer> kinds = IntStream.range(0, stock.pieces().size())
                .filter(kind -> canBeHad.test(stock.pieces().get(kind)))
                .filter(kind -> options.board().fit(stock.pieces().get(kind)) != Fit.BLOCKED)
                .boxed()
                .toList();
        sockets = new ClassSockets(
                stock,
                options.group().now(),
                options.board().order().sockets(),
                options.group().setup().board().fill().blank(),
                kinds,
                new boolean[stock.pieces().size()]);
    }

    /** With what is offered or on the shelf. */
    public static Trial of(Stock stock, Options options) {
        return new Trial(stock, options, stock::isOfferedOrOwned);
    }

    /** As if there were as many fillers as wanted. */
    public static Trial withFillers(Stock stock, Options options) {
        return new Trial(stock, options, piece -> piece instanceof Filler || stock.isOfferedOrOwned(piece));
    }

    /**
     * The first population, least work first, that would be on target and is only in doubt.
     *
     * @param canBeHad whether these modules can come from outside
     */
    public Optional<Population> firstUnknown(Predicate<List<Piece>> canBeHad) {
        Target target = options.group().target().orElseThrow();
        JudgedBoard board = options.board();
        for (RawPopulation raw : RawPopulations.list(sockets, board.order(), target.capacity())) {
            Population after = sockets.population(raw.codes());
            if (board.weigh(after) == Weight.UNKNOWN
                    && !board.allows(options.group().now(), after)
                    && Targets.meets(target, board.setup(after), board.operate(after))
                    && canBeHad.test(incoming(after))) {
                return Optional.of(after);
            }
        }
        return Optional.empty();
    }

    /** The first population, least work first, that is allowed and holds enough, whatever else it lacks. */
    public Optional<Population> firstAllowed() {
        Target target = options.group().target().orElseThrow();
        return RawPopulations.list(sockets, options.board().order(), target.capacity()).stream()
                .map(raw -> sockets.population(raw.codes()))
                .filter(after -> options.board().allows(options.group().now(), after))
                .findFirst();
    }

    /** The first population, least work first, that is allowed and on target. */
    public Optional<Population> firstOnTarget() {
        Target target = options.group().target().orElseThrow();
        return RawPopulations.list(sockets, options.board().order(), target.capacity()).stream()
                .map(raw -> sockets.population(raw.codes()))
                .filter(after -> options.board().allows(options.group().now(), after))
                .filter(after -> shortfalls(after).isEmpty())
                .findFirst();
    }

    /** What a population lacks. */
    public List<String> shortfalls(Population after) {
        return Targets.shortfalls(options.group().target().orElseThrow(), options.board().setup(after),
                options.board().operate(after));
    }

    /** The modules and fillers a population takes from outside, in slot order. */
    public List<Piece> incoming(Population after) {
        List<Piece> coming = new ArrayList<>(after.pieces());
        options.group().now().pieces().forEach(coming::remove);
        return coming;
    }
}
