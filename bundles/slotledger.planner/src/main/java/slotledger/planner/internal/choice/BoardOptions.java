package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BiConsumer;
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
    private record Question(Population now, Target target, boolean isUniform) {
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
    private boolean[] opensForRoom = new boolean[0];

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

    /** Shows each class with its machines as they are. */
    void show(BiConsumer<Integer, Options> visitor) {
        looked.forEach(each -> visitor.accept(
                each.number(), new Options(each.group(), board, List.of(each.unchanged()), List.of())));
    }

    /** Says which classes may be opened so that their room becomes uniform, by their numbers. */
    void open(boolean[] forRoom) {
        opensForRoom = forRoom;
    }

    /** Below target, or above it where the policy lets modules be harvested; or because somebody decided so. */
    private boolean mayOpen(Looked each) {
        Optional<Population> pinned = each.group().decided().pinned();
        if (pinned.isPresent()) {
            return !pinned.get().equals(each.group().now());
        }
        return !each.group().leaveAlone()
                && each.group().target().isPresent()
                && (!each.unchanged().onTarget() || policy.harvest() && policy.reusePulled()
                        || opensForRoom[each.number()]);
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
        looked.forEach(each -> each.group().decided().pinned()
                .ifPresent(pinned -> numbers(pinned).forEach(kind -> worth[kind] = true)));
    }

    private List<Integer> numbers(Population population) {
        return board.order().sockets().stream()
                .flatMap(socket -> population.in(socket).piece().stream())
                .map(stock::number)
                .distinct()
                .toList();
    }

    /** Lists what can be done, by the numbers of the classes. */
    void list(boolean[] worth, Options[] options) {
        Map<JudgedSockets, Coming> coming = new HashMap<>();
        for (Looked each : looked) {
            boolean isOpened = mayOpen(each);
            if (isOpened && each.group().decided().pinned().isPresent()) {
                options[each.number()] = pinned(each, each.group().decided().pinned().get());
                continue;
            }
            List<Candidate> candidates = isOpened
                    ? lists.computeIfAbsent(
                            new Question(each.group().now(), plain(each.group().target().orElseThrow()),
                                    each.group().isInUniformRoom()),
                            unused -> list(each, worth, coming))
                    : List.of(each.unchanged());
            options[each.number()] =
                    new Options(each.group(), board, candidates, isOpened ? fitting : List.of());
        }
    }

    /** Nothing else but what somebody decided; that it stays as it is stands for a decision that can't be kept. */
    private Options pinned(Looked each, Population after) {
        boolean[] worth = new boolean[stock.pieces().size()];
        Arrays.fill(worth, true);
        ClassSockets sockets = new ClassSockets(
                stock, each.judged(), each.group().now(), Optional.empty(), numbers(after), worth);
        int[] row = each.judged().codes().codes(after);
        int place = each.judged().place(row);
        int[] counts = new int[sockets.kindCount()];
        sockets.count(row, counts);
        boolean onTarget = each.group().target().filter(target -> check(each.judged(), target).meets(place))
                .isPresent();
        Candidate only = new Candidate(each.judged(), place, sockets.used(counts), sockets.freed(counts),
                sockets.touches(counts, place), onTarget, 0);
        return new Options(
                each.group(), board, List.of(each.unchanged(), only), List.copyOf(only.used().keySet()));
    }

    private List<Candidate> list(Looked each, boolean[] worth, Map<JudgedSockets, Coming> coming) {
        if (each.group().isInUniformRoom()) {
            return listForRoom(each, coming);
        }
        ClassSockets sockets = new ClassSockets(stock, each.judged(), each.group().now(),
                each.group().setup().board().fill().blank(), fitting, worth);
        Coming lots = coming.computeIfAbsent(each.judged(), unused -> Coming.of(sockets));
        TargetCheck check = check(each.judged(), each.group().target().orElseThrow());
        return new PopulationLister(sockets, check, each.unchanged().onTarget(), false)
                .list(board, lots, each.unchanged(), check.target().capacity().kibibytes());
    }

    /** All contents the machine could get: what is the best for it may be nothing for the others of its room. */
    private List<Candidate> listForRoom(Looked each, Map<JudgedSockets, Coming> coming) {
        boolean[] worth = new boolean[stock.pieces().size()];
        Arrays.fill(worth, true);
        ClassSockets sockets = new ClassSockets(stock, each.judged(), each.group().now(),
                each.group().setup().board().fill().blank(), fitting, worth);
        Coming lots = coming.computeIfAbsent(each.judged(), unused -> Coming.of(sockets));
        TargetCheck check = check(each.judged(), each.group().target().orElseThrow());
        boolean mayLose = !each.unchanged().onTarget() || policy.harvest() && policy.reusePulled();
        long least = check.target().capacity().kibibytes();
        return new PopulationLister(sockets, check, false, true).list(board, lots, each.unchanged(),
                mayLose ? least : Math.max(least, each.group().now().total().kibibytes()));
    }
}
