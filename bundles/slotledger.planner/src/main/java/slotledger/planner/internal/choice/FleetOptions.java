package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import slotledger.model.board.BoardId;
import slotledger.model.board.Processor;
import slotledger.model.board.Redundancy;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Policy;
import slotledger.model.trade.PriceRule;
import slotledger.planner.PlanRequest;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/**
 * Finds for every class of a fleet what can be done with its machines. Boards don't know of each other, so that each
 * is worked on by itself, several at a time.
 */
public final class FleetOptions {

    private record BoardKey(
            BoardId board, int processors, Optional<Processor> processor, Optional<String> operatingSystem,
            Redundancy redundancy) {

        static BoardKey of(Setup setup) {
            return new BoardKey(setup.board().id(), setup.processors(), setup.processor(), setup.operatingSystem(),
                    setup.redundancy());
        }
    }

    private final Policy policy;
    private final Stock stock;
    private final int classes;
    private final Map<BoardKey, BoardOptions> boards = new LinkedHashMap<>();

    private final Choices choices;

    /** Nobody decided anything beforehand. */
    public FleetOptions(MemoryRules rules, Policy policy, Stock stock, List<MachineClass> classes) {
        this(rules, policy, Choices.NONE, stock, classes);
    }

    public FleetOptions(
            MemoryRules rules, Policy policy, Choices choices, Stock stock, List<MachineClass> classes) {
        this.policy = policy;
        this.choices = choices;
        this.stock = stock;
        this.classes = classes.size();
        for (int i = 0; i < classes.size(); i++) {
            Setup setup = classes.get(i).setup();
            boards.computeIfAbsent(BoardKey.of(setup), unused -> new BoardOptions(rules, policy, stock, setup))
                    .add(i, classes.get(i));
        }
    }

    /** The options of each class, in their order. */
    public List<Options> list(Progress progress) {
        List<BoardOptions> each = List.copyOf(boards.values());
        Shared.forEach(each, BoardOptions::look, progress, "looking at the machines as they are");
        openRooms(each);
        boolean[] pulled = new boolean[stock.pieces().size()];
        if (policy.reusePulled()) {
            each.forEach(board -> board.markPulled(pulled));
        }
        boolean[] canBeHad = pulled.clone();
        IntStream.range(0, canBeHad.length)
                .filter(kind -> stock.isOfferedOrOwned(stock.pieces().get(kind)))
                .forEach(kind -> canBeHad[kind] = true);
        IntStream.range(0, canBeHad.length)
                .filter(kind -> choices.forbids(stock.pieces().get(kind)))
                .forEach(kind -> canBeHad[kind] = false);
        Shared.forEach(each, board -> board.fit(canBeHad), progress, "looking at what fits");
        boolean[] worth = new boolean[canBeHad.length];
        if (policy.reusePulled()) {
            each.forEach(board -> board.markFitting(worth));
        }
        Options[] options = new Options[classes];
        Shared.forEach(each, board -> board.list(worth, options), progress, "listing populations");
        return Lab.narrow(Arrays.asList(options), policy.harvest() && policy.reusePulled());
    }

    private void openRooms(List<BoardOptions> each) {
        Options[] now = new Options[classes];
        each.forEach(board -> board.show((number, options) -> now[number] = options));
        boolean[] opens = Lab.opening(Arrays.asList(now));
        each.forEach(board -> board.open(opens));
    }

    /** Every board of the fleet, with its processors. */
    public List<JudgedBoard> boards() {
        return boards.values().stream().map(BoardOptions::board).toList();
    }

    /** What this search leaves out, for the proof. */
    public static List<String> limits(PlanRequest request) {
        List<String> limits = new ArrayList<>(always());
        if (!request.policy().costCentreBudgets().isEmpty() && request.market().offers().stream()
                .anyMatch(offer -> offer.rule() == PriceRule.FURTHER_PACKS && offer.steps().size() > 1)) {
            limits.add("Where further packs are cheaper, the budget of a cost centre is held by an upper bound of its"
                    + " share; a plan that charges the centre up to its last cent may be missed.");
        }
        return List.copyOf(limits);
    }

    private static List<String> always() {
        return List.of(
                "On boards with up to %d sockets at most %d kinds of modules are brought into one machine."
                        .formatted(Fillings.MOST_UNITS_IN_FULL, Fillings.MOST_NEW_KINDS),
                ("On boards with more sockets the rest beside the own modules is filled with one kind, in the order or"
                        + " the table of the board's document; where the own modules can be kept in more than %d ways,"
                        + " the largest stay; where the sockets are up to %d banks, each bank stays, is emptied or is"
                        + " filled with one kind.")
                                .formatted(Fillings.MOST_WAYS_TO_KEEP, Fillings.MOST_UNITS_IN_FULL),
                "A machine never runs over fewer channels after the work than now, unless it gives modules away.",
                "A machine is opened only where it reaches its target afterwards; half an upgrade isn't planned.",
                "Among plans of equal cost the one with the least work is looked for, but that is not proven for large"
                        + " fleets.");
    }
}
