package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import slotledger.model.machine.Population;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Target;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** What can be done with the machines of one board. For one thread at a time. */
final class BoardOptions {

    /** A class with its machines as they are. */
    private record Looked(int number, MachineClass group, JudgedSockets judged, Candidate unchanged) {
    }

    /** Classes with the same answer have the same list. */
    private record Question(Population now, Target target) {
    }

    private record Goal(JudgedSockets judged, Target target) {
    }

    private final Policy policy;
    private final Stock stock;
    private final JudgedBoard board;
    private final List<Integer> numbers = new ArrayList<>();
    private final List<MachineClass> groups = new ArrayList<>();
    private final List<Looked> looked = new ArrayList<>();
    private final Map<Goal, TargetCheck> checks = new HashMap<>();
    private final Map<Question, List<Candidate>> lists = new HashMap<>();
    private List<Integer> fitting = List.of();

    BoardOptions(MemoryRules rules, Policy policy, Stock stock, Setup setup) {
        this.policy = policy;
        this.stock = stock;
        board = new JudgedBoard(rules, setup);
    }

    void add(int number, MachineClass group) {
        numbers.add(number);
        groups.add(group);
    }

    JudgedBoard board() {
        return board;
    }

    /** Looks at the machines as they are. */
    void look() {
        for (int i = 0; i < groups.size(); i++) {
            MachineClass group = groups.get(i);
            JudgedSockets judged = board.sockets(group.now());
            int place = judged.place(judged.codes().codes(group.now()));
            boolean onTarget = group.target().filter(target -> check(judged, target).meets(place)).isPresent();
            judged.way(place);
            looked.add(new Looked(numbers.get(i), group, judged,
                    new Candidate(judged, place, Amounts.NONE, Amounts.NONE, 0, onTarget, 0)));
        }
    }

    private TargetCheck check(JudgedSockets judged, Target target) {
        Target plain = plain(target);
        return checks.computeIfAbsent(new Goal(judged, plain),
                unused -> new TargetCheck(judged, board.setup(Population.empty(groups.get(0).setup().board())), plain));
    }

    /** Without what doesn't matter for a machine by itself. */
    private static Target plain(Target target) {
        return new Target("", target.capacity(), target.sameChannels(), target.ecc(), target.rate(), 1);
    }

    /** Below target, or above it where the policy lets modules be harvested. */
    private boolean mayOpen(Looked each) {
        return !each.group().leaveAlone()
                && each.group().target().isPresent()
                && (!each.unchanged().onTarget() || policy.harvest() && policy.reusePulled());
    }

    /** Marks the kinds that may come out of these machines for others. */
    void markPulled(boolean[] pulled) {
        looked.stream().filter(this::mayOpen).forEach(each -> each.group().setup().board().sockets()
                .forEach(slot -> each.group().now().in(slot.label()).piece()
                        .ifPresent(kind -> pulled[stock.number(kind)] = true)));
    }

    /** Finds the kinds that fit; none where no machine may be opened. */
    void fit(boolean[] canBeHad) {
        if (looked.stream().anyMatch(this::mayOpen)) {
            fitting = IntStream.range(0, canBeHad.length)
                    .filter(kind -> canBeHad[kind] && board.fit(stock.pieces().get(kind)) == Fit.FITS)
                    .boxed()
                    .toList();
        }
    }

    /** Marks the kinds of use to these machines. */
    void markFitting(boolean[] worth) {
        fitting.forEach(kind -> worth[kind] = true);
    }

    /** Lists what can be done, by the numbers of the classes. */
    void list(boolean[] worth, Options[] options) {
        Map<JudgedSockets, Coming> coming = new HashMap<>();
        for (Looked each : looked) {
            boolean isOpened = mayOpen(each);
            List<Candidate> candidates = isOpened
                    ? lists.computeIfAbsent(
                            new Question(each.group().now(), plain(each.group().target().orElseThrow())),
                            unused -> list(each, worth, coming))
                    : List.of(each.unchanged());
            options[each.number()] =
                    new Options(each.group(), board, candidates, isOpened ? fitting : List.of());
        }
    }

    private List<Candidate> list(Looked each, boolean[] worth, Map<JudgedSockets, Coming> coming) {
        ClassSockets sockets = new ClassSockets(stock, each.judged(), each.group().now(),
                each.group().setup().board().fill().blank(), fitting, worth);
        Coming lots = coming.computeIfAbsent(each.judged(), unused -> Coming.of(sockets));
        TargetCheck check = check(each.judged(), each.group().target().orElseThrow());
        return new PopulationLister(sockets, check, each.unchanged().onTarget()).list(board, lots, each.unchanged());
    }
}
