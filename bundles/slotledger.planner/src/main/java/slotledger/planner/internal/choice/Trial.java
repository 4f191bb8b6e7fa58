package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import slotledger.model.machine.Population;
import slotledger.model.module.Filler;
import slotledger.model.module.Piece;
import slotledger.model.trade.Target;
import slotledger.model.verdict.Weight;
import slotledger.planner.Targets;

/** Tries populations for a machine that could not be helped, with kinds that might fit among them. */
public final class Trial {

    /** A filling, and what it takes. */
    private record Found(int place, int touches, long kibibytes) {
    }

    private final Options options;
    private final ClassSockets sockets;
    private final JudgedSockets judged;
    private final TargetCheck check;
    private final List<Found> found = new ArrayList<>();

    private Trial(Stock stock, Options options, Predicate<Piece> canBeHad) {
        this.options = options;
        JudgedBoard board = options.board();
        Population now = options.group().now();
        Target target = options.group().target().orElseThrow();
        List<Integer> kinds = IntStream.range(0, stock.pieces().size())
                .filter(kind -> canBeHad.test(stock.pieces().get(kind)))
                .filter(kind -> board.fit(stock.pieces().get(kind)) != Fit.BLOCKED)
                .boxed()
                .toList();
        judged = board.sockets(now);
        sockets = new ClassSockets(stock, judged, now, options.group().setup().board().fill().blank(), kinds,
                new boolean[stock.pieces().size()]);
        check = new TargetCheck(judged, board.setup(now), target);
        Fillings.search(sockets, board.order(), Coming.of(sockets), target.capacity().kibibytes(), new All());
        found.sort(Comparator.comparingInt(Found::touches)
                .thenComparingLong(Found::kibibytes)
                .thenComparing(Found::place, sockets::compareKinds));
    }

    /** Wants everything, beaten or not. */
    private final class All implements Fillings.Sieve {

        private final Set<Integer> seen = new HashSet<>();

        @Override
        public boolean wants(int[] counts) {
            return true;
        }

        @Override
        public void take(int[] counts, int... places) {
            for (int place : places) {
                if (seen.add(place)) {
                    found.add(new Found(place, sockets.touches(counts, place), sockets.kibibytesTaken(counts)));
                }
            }
        }
    }

    private boolean isAllowed(int place) {
        return judged.allows(sockets.now(), place);
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
        return found.stream().map(Found::place)
                .filter(place -> judged.weight(place) == Weight.UNKNOWN && !isAllowed(place) && check.meets(place))
                .map(judged::population)
                .filter(after -> canBeHad.test(incoming(after)))
                .findFirst();
    }

    /** The first population, least work first, that is allowed and holds enough, whatever else it lacks. */
    public Optional<Population> firstAllowed() {
        return found.stream().map(Found::place).filter(this::isAllowed).findFirst().map(judged::population);
    }

    /** The first population, least work first, that is allowed and on target. */
    public Optional<Population> firstOnTarget() {
        return onTarget().findFirst();
    }

    /** The populations that are allowed and on target, least work first. */
    Stream<Population> onTarget() {
        return found.stream().map(Found::place)
                .filter(place -> isAllowed(place) && check.meets(place))
                .map(judged::population);
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
