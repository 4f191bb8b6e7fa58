package slotledger.planner.internal.milp;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.stream.IntStream;
import slotledger.model.task.Progress;
import slotledger.planner.internal.milp.Parts.Part;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.MilpSolution;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/**
 * Searches a programme part by part. Without the rows that join them the parts together cost no more than anything
 * that keeps those too; what they then lack, such as the delivery charge of a supplier they use, is decided for all of
 * them, yes or no, in a tree of few nodes. A part is searched again only where a decision takes away what it chose.
 */
final class Split {

    private static final int MOST_NODES = 64;
    private static final int COMPLETING_NODES = 1000;

    /**
     * What came of it.
     *
     * @param found   values, where there are some
     * @param bound   no values have a smaller goal
     * @param safe    the part of the bound that exact arithmetic alone proves
     * @param isStuck whether a row that joins parts was in the way, so that one search of the whole may find better
     */
    record Result(Optional<long[]> found, long bound, long safe, boolean isStuck) {
    }

    /** Lower bounds and values by part; no values where none are known. */
    private record Node(Box box, long[] lower, long[][] values, int number) {
    }

    /** Of one part: nothing costs less, and no values where none were found. */
    private record Outcome(long lower, long safe, long[] values, boolean isPossible) {
    }

    private final Search whole;
    private final MilpSolver solver;
    private final IntegerProgramme programme;
    private final List<Row> rows;
    private final List<Part> parts;
    private final long[] cost;
    private final int mostNodes;
    private final Progress progress;
    private final long constant;
    private final PriorityQueue<Node> open = new PriorityQueue<>(
            Comparator.comparingLong(this::bound).thenComparing(Node::number, Comparator.reverseOrder()));
    private Optional<long[]> best = Optional.empty();
    private long value = Long.MAX_VALUE;
    private long leaves = Long.MAX_VALUE;
    private long safe;
    private boolean isStuck;
    private int nodes;

    Split(Search whole, MilpSolver solver, IntegerProgramme programme, List<Row> rows, Parts parts, long[] cost,
            Box box, int mostNodes, Progress progress) {
        this.whole = whole;
        this.solver = solver;
        this.programme = programme;
        this.rows = rows;
        this.parts = parts.all();
        this.cost = cost;
        this.mostNodes = mostNodes;
        this.progress = progress;
        long sum = 0;
        for (int variable = 0; variable < cost.length; variable++) {
            if (box.low[variable] == box.high[variable]) {
                sum = Math.addExact(sum, Math.multiplyExact(cost[variable], box.low[variable]));
            }
        }
        constant = sum;
    }

    /** Searches; empty where a part has no values at all. */
    Optional<Result> minimise(Box box, Optional<long[]> start) {
        start.ifPresent(this::take);
        Node root = new Node(box, new long[parts.size()], new long[parts.size()][], nodes++);
        if (!solve(root, Long.MAX_VALUE)) {
            return Optional.empty();
        }
        if (root.values()[parts.size() - 1] == null) {
            return Optional.of(new Result(best, Math.min(value, bound(root)), safe, true));
        }
        look(root);
        while (!open.isEmpty() && nodes < MOST_NODES && !progress.isCancelled()) {
            Node node = open.poll();
            if (bound(node) < value && solve(node, value - 1)) {
                look(node);
            }
        }
        open.forEach(this::leave);
        isStuck |= !open.isEmpty();
        return Optional.of(new Result(best, Math.min(value, leaves), safe, isStuck));
    }

    private void take(long[] values) {
        long here = Search.value(cost, values);
        if (here < value) {
            best = Optional.of(values);
            value = here;
        }
    }

    private void leave(Node node) {
        leaves = Math.min(leaves, bound(node));
    }

    private long bound(Node node) {
        return Math.addExact(constant, IntStream.range(0, parts.size()).mapToLong(part -> node.lower()[part]).sum());
    }

    /** Searches the parts whose values don't fit any more; false where nothing of at most so much is left. */
    private boolean solve(Node node, long most) {
        List<Integer> wanted = IntStream.range(0, parts.size())
                .filter(part -> !fits(node, part)).boxed().toList();
        boolean isRoot = node.number() == 0;
        long room = isRoot ? Long.MAX_VALUE : Math.subtractExact(most, bound(node));
        List<Outcome> outcomes = wanted.parallelStream()
                .map(part -> search(parts.get(part), node.box(), isRoot ? Optional.empty() : Optional.of(
                        Math.addExact(node.lower()[part], room))))
                .toList();
        boolean isPossible = true;
        for (int i = 0; i < wanted.size(); i++) {
            int part = wanted.get(i);
            Outcome outcome = outcomes.get(i);
            node.lower()[part] = isRoot ? outcome.lower() : Math.max(node.lower()[part], outcome.lower());
            node.values()[part] = outcome.values();
            safe += isRoot ? outcome.safe() : 0;
            isPossible &= outcome.isPossible();
        }
        safe += isRoot ? constant : 0;
        return isPossible && bound(node) <= most;
    }

    private boolean fits(Node node, int part) {
        long[] values = node.values()[part];
        return values != null && IntStream.of(parts.get(part).variables()).allMatch(variable ->
                values[variable] >= node.box().low[variable] && values[variable] <= node.box().high[variable]);
    }

    private Outcome search(Part part, Box box, Optional<Long> most) {
        Residual residual = new Residual(programme, part.rows(), cost, box, part.variables());
        long constant = residual.constant();
        long lowest = lowest(part, box);
        if (!residual.isPossible()) {
            return new Outcome(lowest, lowest, null, false);
        }
        Search search = new Search(solver, residual.programme(), List.of(), progress);
        try {
            return search.part(whole, residual.cost(), new Box(residual.programme()), mostNodes,
                            best.flatMap(residual::inside), most.map(each -> Math.subtractExact(each, constant)))
                    .map(found -> new Outcome(Math.addExact(found.bound(), constant),
                            Math.addExact(found.safe(), constant), residual.whole(found.values()), true))
                    .orElseGet(() -> new Outcome(lowest, lowest, null, false));
        } catch (SolverException e) {
            return new Outcome(lowest, lowest, null, true);
        }
    }

    private long lowest(Part part, Box box) {
        long sum = 0;
        for (int variable : part.variables()) {
            long each = cost[variable] > 0 ? box.low[variable] : box.high[variable];
            sum = Math.addExact(sum, Math.multiplyExact(cost[variable], each));
        }
        return sum;
    }

    /** Puts the parts together, and branches where together they cost more than each by itself. */
    private void look(Node node) {
        Optional<long[]> whole = complete(node);
        whole.ifPresent(this::take);
        if (bound(node) >= value) {
            return;
        }
        Optional<Integer> decision = decision(node, whole);
        if (decision.isEmpty()) {
            leave(node);
            isStuck |= whole.isEmpty();
            return;
        }
        for (long each = 0; each <= 1; each++) {
            Box box = node.box().copy();
            box.low[decision.get()] = each;
            box.high[decision.get()] = each;
            rows.stream().filter(Row::joins).forEach(box::keep);
            open.add(new Node(box, node.lower().clone(), node.values().clone(), nodes++));
        }
    }

    private Optional<long[]> complete(Node node) {
        Box box = node.box().copy();
        for (int part = 0; part < parts.size() - 1; part++) {
            long[] values = node.values()[part];
            if (values == null) {
                return Optional.empty();
            }
            for (int variable : parts.get(part).variables()) {
                box.low[variable] = values[variable];
                box.high[variable] = values[variable];
            }
        }
        try {
            return new Residual(programme, rows, cost, box)
                    .minimise(solver, COMPLETING_NODES, Optional.empty(), progress)
                    .map(MilpSolution::values);
        } catch (SolverException e) {
            return Optional.empty();
        }
    }

    /** The dearest choice that the parts together decide otherwise than it would be by itself. */
    private Optional<Integer> decision(Node node, Optional<long[]> whole) {
        int last = parts.size() - 1;
        List<Integer> choices = new ArrayList<>();
        for (int variable : parts.get(last).variables()) {
            boolean isOpen = node.box().low[variable] == 0 && node.box().high[variable] == 1;
            if (isOpen && (whole.isEmpty() || whole.get()[variable] != node.values()[last][variable])) {
                choices.add(variable);
            }
        }
        return choices.stream().max(Comparator.<Integer>comparingInt(programme::first)
                .thenComparing(variable -> Math.abs(cost[variable]))
                .thenComparing(Comparator.reverseOrder()));
    }
}
