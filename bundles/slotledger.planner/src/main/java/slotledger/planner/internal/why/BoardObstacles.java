package slotledger.planner.internal.why;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Takes;
import slotledger.model.machine.Population;
import slotledger.model.module.Filler;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.plan.Obstacle;
import slotledger.model.trade.Target;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.planner.internal.choice.Fit;
import slotledger.planner.internal.choice.JudgedBoard;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.choice.Trial;

/** Why no population of a machine is both allowed and on target: a missing fact, no module to be had, or the board. */
public final class BoardObstacles {

    private final Stock stock;

    public BoardObstacles(Stock stock) {
        this.stock = stock;
    }

    Obstacle of(Options options) {
        return missingFact(options, modules -> true).or(() -> missingFillers(options))
                .orElseGet(() -> {
                    Obstacle known = known(options);
                    return oneRule(options).map(rule -> but(known, rule)).orElse(known);
                });
    }

    /** Modules to be had that a single rule keeps out. */
    private Optional<OneRule> oneRule(Options options) {
        return OneRule.of(options, kindsOfTheBoard(options).stream().filter(stock::isOfferedOrOwned).toList());
    }

    /** Names the rule, and what would have to be known of the board; nobody is to break it. */
    private static Obstacle but(Obstacle obstacle, OneRule rule) {
        Reason reason = rule.reasons().get(0);
        return new Obstacle(
                obstacle.kind(),
                "%s With %s it would be on target, were it not for the rule %s (%s): %s".formatted(obstacle.message(),
                        text(rule.coming()), rule.rule(), reason.source(), sentence(reason)),
                "%s Only a document of the board that says otherwise would allow %s."
                        .formatted(obstacle.freedBy(), text(rule.coming())).strip(),
                obstacle.reasons().isEmpty() ? rule.reasons() : obstacle.reasons());
    }

    private static String sentence(Reason reason) {
        return reason.sentence().endsWith(".") ? reason.sentence() : reason.sentence() + ".";
    }

    private Obstacle known(Options options) {
        Target target = options.group().target().orElseThrow();
        if (options.board().order().sockets().isEmpty()) {
            return new Obstacle(
                    Obstacle.Kind.RULE,
                    "All memory of the board %s is soldered and can't be changed; it has %s."
                            .formatted(name(options), Obstacles.shortfall(options)),
                    "A lower target, or another machine.",
                    List.of());
        }
        Optional<Capacity> most = limit(options);
        if (most.isPresent() && !most.get().atLeast(target.capacity())) {
            return tooSmall(options, most.get());
        }
        if (options.fitting().stream().noneMatch(kind -> stock.pieces().get(kind) instanceof ModuleKind)) {
            return noModule(options, "No module that is offered or owned fits the board %s; it has %s."
                    .formatted(name(options), Obstacles.shortfall(options)));
        }
        Capacity largest = options.fitting().stream()
                .map(kind -> stock.pieces().get(kind).capacity()).max(Comparator.naturalOrder()).orElseThrow();
        int sockets = options.board().order().sockets().size();
        if (most.isPresent() && !largest.times(sockets).plus(soldered(options)).atLeast(target.capacity())) {
            return noModule(options, ("The largest module to be had that fits holds %s, which is too little for %s in"
                    + " %d sockets; it has %s.")
                    .formatted(largest, target.capacity(), sockets, Obstacles.shortfall(options)));
        }
        Trial trial = Trial.of(stock, options);
        return trial.firstAllowed()
                .map(after -> rule(options, "With %s the board %s would still have %s".formatted(
                        text(trial.incoming(after)), name(options), String.join(" and ", trial.shortfalls(after))),
                        List.of()))
                .orElseGet(() -> rule(options,
                        "No population of the board %s with the modules to be had is allowed and holds %s"
                                .formatted(name(options), target.capacity()),
                        blocking(options, target)));
    }

    private static String name(Options options) {
        return options.group().setup().board().name();
    }

    private static Obstacle tooSmall(Options options, Capacity most) {
        return new Obstacle(
                Obstacle.Kind.RULE,
                "The board %s takes at most %s (%s); it has %s.".formatted(
                        name(options), most, options.group().setup().board().sourceOf(BoardFact.LARGEST_TOTAL),
                        Obstacles.shortfall(options)),
                "A target of at most %s, or another machine.".formatted(most),
                List.of());
    }

    private static Obstacle rule(Options options, String sentence, List<Reason> reasons) {
        String because = reasons.isEmpty() ? "" : " " + reasons.get(0).sentence();
        return new Obstacle(
                Obstacle.Kind.RULE,
                "%s; it has %s.%s".formatted(sentence, Obstacles.shortfall(options), because),
                "Other modules, a lower target, or another machine.",
                reasons);
    }

    /** A module that is offered or owned would do, if a fact were known. */
    Optional<Obstacle> missingFact(Options options, Predicate<List<Piece>> canBeHad) {
        Trial trial = Trial.of(stock, options);
        return trial.firstUnknown(canBeHad).map(after -> {
            List<Reason> doubts = options.board().doubts(options.group().now(), after);
            Reason first = doubts.get(0);
            return new Obstacle(
                    Obstacle.Kind.MISSING_FACT,
                    "A fact is missing to say whether it can reach its target with %s: %s"
                            .formatted(text(trial.incoming(after)), first.sentence()),
                    first.remedy(),
                    doubts);
        });
    }

    /** Modules would do, were there something for the sockets that become empty. */
    private Optional<Obstacle> missingFillers(Options options) {
        if (options.group().setup().board().fill().blank().isEmpty()) {
            return Optional.empty();
        }
        Trial trial = Trial.withFillers(stock, options);
        return trial.firstOnTarget().map(trial::incoming)
                .filter(coming -> coming.stream().anyMatch(Filler.class::isInstance))
                .map(coming -> noFiller(
                        options,
                        text(coming.stream().filter(ModuleKind.class::isInstance).toList()),
                        text(coming.stream().filter(Filler.class::isInstance).toList())));
    }

    private static Obstacle noFiller(Options options, String modules, String fillers) {
        return new Obstacle(
                Obstacle.Kind.NO_MODULE,
                "With %s it would reach its target, but its empty sockets want %s, which can't be had; it has %s."
                        .formatted(modules, fillers, Obstacles.shortfall(options)),
                "An offer of %s.".formatted(fillers),
                List.of());
    }

    private static String text(List<Piece> kinds) {
        return kinds.isEmpty() ? "the modules it has" : kinds.stream()
                .collect(Collectors.groupingBy(kind -> kind, LinkedHashMap::new, Collectors.counting()))
                .entrySet().stream()
                .map(entry -> entry.getValue() + " x " + entry.getKey())
                .collect(Collectors.joining(" and "));
    }

    private Obstacle noModule(Options options, String message) {
        Board board = options.group().setup().board();
        String wanted = board.takes().stream().map(BoardObstacles::text).distinct().collect(Collectors.joining(" or "));
        return new Obstacle(Obstacle.Kind.NO_MODULE, message, "An offer of %s.".formatted(wanted), List.of());
    }

    private static String text(Takes takes) {
        String forms = takes.forms().stream().sorted().map(form -> form.text()).collect(Collectors.joining(" or "));
        return takes.generation().text() + " " + forms
                + takes.largestModule().map(most -> " modules of up to " + most).orElse(" modules");
    }

    /** The most memory the board's document allows with its processors; empty where it is silent. */
    private static Optional<Capacity> limit(Options options) {
        Board board = options.group().setup().board();
        boolean isSilent = board.takes().stream().anyMatch(way -> way.largestModule().isEmpty());
        Capacity inSockets = board.takes().stream()
                .flatMap(way -> way.largestModule().stream())
                .max(Comparator.naturalOrder())
                .orElse(Capacity.NONE)
                .times(options.board().order().sockets().size());
        Optional<Capacity> bySlot = isSilent ? Optional.empty() : Optional.of(inSockets.plus(soldered(options)));
        return board.largestTotal().map(total -> bySlot.map(total::min).orElse(total)).or(() -> bySlot);
    }

    private static Capacity soldered(Options options) {
        long sockets = options.board().order().sockets().stream()
                .mapToLong(label -> options.group().now().in(label).capacity().kibibytes()).sum();
        return Capacity.ofKiB(options.group().now().total().kibibytes() - sockets);
    }

    /** The reasons against the population with one kind in all sockets that breaks the fewest rules. */
    private List<Reason> blocking(Options options, Target target) {
        JudgedBoard board = options.board();
        List<List<Reason>> attempts = new ArrayList<>();
        for (ModuleKind kind : kindsOfTheBoard(options)) {
            for (List<String> sockets : board.order().patterns()) {
                Population filled = options.group().now();
                for (String socket : sockets) {
                    filled = filled.with(socket, kind);
                }
                if (filled.total().atLeast(target.capacity()) && board.weigh(filled) == Weight.BLOCKS) {
                    attempts.add(board.judge(filled).reasons(Weight.BLOCKS));
                }
            }
        }
        return attempts.stream().min(Comparator.comparingInt(List::size)).orElse(List.of());
    }

    private List<ModuleKind> kindsOfTheBoard(Options options) {
        List<Takes> takes = options.group().setup().board().takes();
        return IntStream.range(0, stock.pieces().size())
                .mapToObj(stock.pieces()::get)
                .filter(ModuleKind.class::isInstance)
                .map(ModuleKind.class::cast)
                .filter(kind -> takes.stream().anyMatch(way ->
                        kind.generation().filter(way.generation()::equals).isPresent()
                        && kind.form().filter(way.forms()::contains).isPresent()))
                .filter(kind -> options.board().fit(kind) != Fit.UNKNOWN)
                .toList();
    }
}
