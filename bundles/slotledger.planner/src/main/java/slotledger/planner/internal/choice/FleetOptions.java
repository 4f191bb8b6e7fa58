package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import slotledger.model.board.BoardId;
import slotledger.model.board.Processor;
import slotledger.model.board.Redundancy;
import slotledger.model.task.Progress;
import slotledger.model.trade.Policy;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** Finds for every class of a fleet what can be done with its machines. */
public final class FleetOptions {

    private record BoardKey(
            BoardId board, int processors, Optional<Processor> processor, Optional<String> operatingSystem,
            Redundancy redundancy) {
    }

    private final MemoryRules rules;
    private final Policy policy;
    private final Stock stock;
    private final List<MachineClass> classes;
    private final Map<BoardKey, JudgedBoard> boards = new LinkedHashMap<>();

    public FleetOptions(MemoryRules rules, Policy policy, Stock stock, List<MachineClass> classes) {
        this.rules = rules;
        this.policy = policy;
        this.stock = stock;
        this.classes = List.copyOf(classes);
    }

    /** The options of each class, in their order. */
    public List<Options> list(Progress progress) {
        boolean[] pulled = pulledKinds();
        List<List<Integer>> fitting = classes.stream().map(group -> fitting(group, pulled)).toList();
        boolean[] worth = new boolean[stock.pieces().size()];
        if (policy.reusePulled()) {
            fitting.forEach(kinds -> kinds.forEach(kind -> worth[kind] = true));
        }
        List<Options> options = new ArrayList<>();
        for (int i = 0; i < classes.size(); i++) {
            progress.check();
            progress.step("listing populations", i / (double) classes.size());
            options.add(options(classes.get(i), fitting.get(i), worth));
        }
        return options;
    }

    private Options options(MachineClass group, List<Integer> fitting, boolean[] worth) {
        JudgedBoard board = board(group);
        PopulationLister lister = new PopulationLister(board, group);
        List<Candidate> candidates = List.of(lister.unchanged());
        if (mayOpen(group)) {
            ClassSockets sockets = new ClassSockets(stock, group.now(), board.order().sockets(),
                    group.setup().board().fill().blank(), fitting, worth);
            candidates = lister.list(sockets, group.target().orElseThrow(), candidates.get(0).onTarget());
        }
        return new Options(group, board, candidates, fitting);
    }

    /** Below target, or above it where the policy lets modules be harvested. */
    private boolean mayOpen(MachineClass group) {
        boolean onTarget = new PopulationLister(board(group), group).unchanged().onTarget();
        return !group.leaveAlone()
                && group.target().isPresent()
                && (!onTarget || policy.harvest() && policy.reusePulled());
    }

    /** The kinds that may come out of machines for others, by number. */
    private boolean[] pulledKinds() {
        boolean[] pulled = new boolean[stock.pieces().size()];
        if (policy.reusePulled()) {
            classes.stream().filter(this::mayOpen).forEach(group -> group.setup().board().sockets()
                    .forEach(slot -> group.now().in(slot.label()).piece()
                            .ifPresent(kind -> pulled[stock.number(kind)] = true)));
        }
        return pulled;
    }

    private List<Integer> fitting(MachineClass group, boolean[] pulled) {
        if (!mayOpen(group)) {
            return List.of();
        }
        JudgedBoard board = board(group);
        return IntStream.range(0, stock.pieces().size())
                .filter(kind -> pulled[kind] || stock.isOfferedOrOwned(stock.pieces().get(kind)))
                .filter(kind -> board.fit(stock.pieces().get(kind)) == Fit.FITS)
                .boxed()
                .toList();
    }

    private JudgedBoard board(MachineClass group) {
        Setup setup = group.setup();
        BoardKey key = new BoardKey(
                setup.board().id(), setup.processors(), setup.processor(), setup.operatingSystem(), setup.redundancy());
        return boards.computeIfAbsent(key, unused -> new JudgedBoard(rules, setup));
    }

    /** Every board asked so far, with its processors. */
    public List<JudgedBoard> boards() {
        return List.copyOf(boards.values());
    }

    /** What this search leaves out, for the proof. */
    public static List<String> limits() {
        return List.of(
                "On boards with up to %d sockets at most %d kinds of modules are brought into one machine."
                        .formatted(RawPopulations.MOST_UNITS_IN_FULL, RawPopulations.MOST_NEW_KINDS),
                "On boards with more sockets the largest own modules stay and the rest is filled with one kind, in the"
                        + " order or the table of the board's document; where they are up to %d banks, each bank stays,"
                                .formatted(RawPopulations.MOST_UNITS_IN_FULL)
                        + " is emptied or is filled with one kind.",
                "A machine never runs over fewer channels after the work than now, unless it gives modules away.",
                "A machine is opened only where it reaches its target afterwards; half an upgrade isn't planned.",
                "Among plans of equal cost the one with the least work is looked for, but that is not proven for large"
                        + " fleets.");
    }
}
