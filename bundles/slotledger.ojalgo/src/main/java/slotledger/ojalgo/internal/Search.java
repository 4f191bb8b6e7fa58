package slotledger.ojalgo.internal;

import java.math.BigInteger;
import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;
import slotledger.model.task.Progress;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;
import slotledger.solver.MilpSolution;

/**
 * Branch and bound. It follows one branch down to whole values, then goes on at the open node with the smallest bound.
 * A node is given up only for a reason that holds in exact arithmetic, so that a mistake of the relaxation costs time
 * and never the proof.
 */
final class Search {

    private static final double WHOLE = 1e-6;
    private static final double HALF = 0.5;

    private record Node(Box box, BigInteger bound, int number) {
    }

    private final IntegerProgramme programme;
    private final Linear goal;
    private final Propagation propagation;
    private final Relaxation relaxation;
    private final ExactBound bounds;
    private final Contradiction contradiction;
    private final PriorityQueue<Node> open =
            new PriorityQueue<>(Comparator.comparing(Node::bound).thenComparing(Node::number));
    private long[] best;
    private long value = Long.MAX_VALUE;
    private int made;

    Search(IntegerProgramme programme, Linear goal) {
        this.programme = programme;
        this.goal = goal;
        propagation = new Propagation(programme, goal);
        relaxation = new Relaxation(programme, goal);
        bounds = new ExactBound(programme, goal);
        contradiction = new Contradiction(programme);
    }

    /** Whether values are known. */
    boolean hasValues() {
        return best != null;
    }

    /** Whether nothing is left to look at. */
    boolean isComplete() {
        return open.isEmpty();
    }

    void offer(long[] values) {
        if (programme.broken(values).isEmpty() && goal.of(values) < value) {
            best = values.clone();
            value = goal.of(values);
        }
    }

    /** Searches until nothing is left, the limit of nodes is reached, or the user cancels. */
    void run(int mostNodes, Progress progress) {
        Box all = Box.of(programme);
        Optional<Node> next = Optional.of(new Node(all, bounds.of(all), made++));
        for (int nodes = 0; next.isPresent(); nodes++) {
            if (nodes == mostNodes || progress.isCancelled()) {
                open.add(next.get());
                return;
            }
            next = expand(next.get()).or(this::bestOpen);
        }
    }

    private Optional<Node> bestOpen() {
        Node first = open.peek();
        if (first == null || isBeaten(first.bound())) {
            open.clear();
            return Optional.empty();
        }
        return Optional.of(open.poll());
    }

    private boolean isBeaten(BigInteger bound) {
        return best != null && bound.compareTo(BigInteger.valueOf(value)) >= 0;
    }

    /** Looks at a node; the child to go on with, where one is left. */
    private Optional<Node> expand(Node node) {
        Box box = node.box().copy();
        if (isBeaten(node.bound()) || !propagation.tighten(box, best == null ? Long.MAX_VALUE : value - 1)) {
            return Optional.empty();
        }
        Relaxation.Answer answer = relaxation.solve(box);
        BigInteger bound = node.bound().max(bounds.of(answer.prices(), box));
        if (answer.isOptimal()) {
            offerNear(answer.values());
        } else if (contradiction.isProven(box)) {
            return Optional.empty();
        }
        return isBeaten(bound) ? Optional.empty() : branch(box, bound, answer);
    }

    private void offerNear(double[] values) {
        long[] near = new long[values.length];
        for (int i = 0; i < near.length; i++) {
            near[i] = Math.round(values[i]);
        }
        offer(near);
    }

    private Optional<Node> branch(Box box, BigInteger bound, Relaxation.Answer answer) {
        int variable = choose(box, answer.values());
        if (variable < 0) {
            offer(box.low);
            return Optional.empty();
        }
        double seen = Math.max(box.low[variable], Math.min(box.high[variable], answer.values()[variable]));
        long split = Math.min(box.high[variable] - 1, (long) Math.floor(seen + WHOLE));
        Node down = new Node(box.with(variable, box.low[variable], split), bound, made++);
        Node up = new Node(box.with(variable, split + 1, box.high[variable]), bound, made++);
        boolean goUp = seen - split > HALF;
        open.add(goUp ? down : up);
        return Optional.of(goUp ? up : down);
    }

    /** The most important variable that isn't whole, or any that isn't fixed; -1 where all are. */
    private int choose(Box box, double[] values) {
        int chosen = -1;
        double worst = -1;
        int first = Integer.MIN_VALUE;
        for (int i = 0; i < values.length; i++) {
            if (box.isFixed(i)) {
                continue;
            }
            double away = Math.abs(values[i] - Math.rint(values[i]));
            double weight = away > WHOLE ? away : 0;
            int own = away > WHOLE ? programme.first(i) : Integer.MIN_VALUE;
            if (own > first || own == first && weight > worst) {
                chosen = i;
                worst = weight;
                first = own;
            }
        }
        return chosen;
    }

    MilpSolution solution() {
        BigInteger least = BigInteger.valueOf(value);
        for (Node node : open) {
            least = least.min(node.bound());
        }
        return new MilpSolution(best, value, least.longValueExact());
    }
}
