package slotledger.planner.internal.milp;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.task.Progress;
import slotledger.planner.internal.milp.Parts.Part;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.IntegerProgramme.Row;
import slotledger.solver.Linear;
import slotledger.solver.LinearSolver;
import slotledger.solver.MilpSolver;
import slotledger.solver.SolverException;

/**
 * Looks part by part for what is better in a goal that breaks ties, while every part stays as good as it is in the
 * goals before and nothing that joins them changes.
 */
final class Ties {

    private final MilpSolver solver;
    private final IntegerProgramme programme;
    private final List<Row> reached;
    private final List<Row> rows;
    private final Progress progress;

    /**
     * @param reached what was reached in the goals before, one row each
     */
    Ties(MilpSolver solver, IntegerProgramme programme, List<Row> reached, Progress progress) {
        this.solver = solver;
        this.programme = programme;
        this.reached = reached;
        this.progress = progress;
        rows = new ArrayList<>(programme.rows());
        rows.addAll(reached);
    }

    /** The best values found; those given where nothing better is. */
    long[] minimise(long[] cost, Box box, int mostNodes, long[] start) {
        Columns columns = new Columns(programme, reached);
        Box fixed = box.copy();
        List<Part> parts = new Parts(columns, rows, box).all();
        for (int variable : parts.get(parts.size() - 1).variables()) {
            fixed.low[variable] = start[variable];
            fixed.high[variable] = start[variable];
        }
        rows.stream().filter(Row::joins).forEach(fixed::keep);
        List<long[]> found = parts.subList(0, parts.size() - 1).parallelStream()
                .map(part -> better(part, cost, fixed, mostNodes, start))
                .toList();
        long[] best = start.clone();
        for (int i = 0; i < found.size(); i++) {
            long[] before = best.clone();
            for (int variable : parts.get(i).variables()) {
                best[variable] = found.get(i)[variable];
            }
            best = isKept(best) ? best : before;
        }
        return best;
    }

    private boolean isKept(long[] values) {
        return programme.broken(values).isEmpty()
                && reached.stream().allMatch(row -> row.sum().of(values) <= row.high());
    }

    private long[] better(Part part, long[] cost, Box fixed, int mostNodes, long[] start) {
        List<Row> kept = new ArrayList<>(part.rows());
        reached.forEach(row -> kept.add(share(row, part, start)));
        Residual residual = new Residual(programme, kept, cost, fixed, part.variables());
        Box box = new Box(residual.programme());
        Optional<long[]> inside = residual.inside(start);
        if (!residual.isPossible() || inside.isEmpty() || residual.programme().size() == 0) {
            return start;
        }
        try {
            List<Row> last = residual.programme().rows();
            narrow(residual.programme(), last.get(last.size() - 1), box, inside);
            return new Search(solver, residual.programme(), List.of(), progress)
                    .among(residual.cost(), box, mostNodes, inside.get())
                    .map(each -> residual.whole(each.values())).orElse(start);
        } catch (SolverException e) {
            return start;
        }
    }

    private static Row share(Row row, Part part, long[] start) {
        Linear sum = new Linear();
        int next = 0;
        for (int term = 0; term < row.sum().size(); term++) {
            int variable = row.sum().variable(term);
            while (next < part.variables().length && part.variables()[next] < variable) {
                next++;
            }
            if (next < part.variables().length && part.variables()[next] == variable) {
                sum.add(variable, row.sum().factor(term));
            }
        }
        return new Row(row.name(), IntegerProgramme.NO_LOW, sum, sum.of(start));
    }

    /** Drops what can't be in anything that is as good in the goal before. */
    private void narrow(IntegerProgramme of, Row goal, Box box, Optional<long[]> start) throws SolverException {
        Optional<LinearSolver> linear = solver.linear();
        if (linear.isPresent()) {
            long[] cost = new long[of.size()];
            goal.sum().forEach((variable, factor) -> cost[variable] = factor);
            try (Relaxation relaxation = new Relaxation(new Columns(of, List.of()), cost, box.copy(), linear.get())) {
                relaxation.solve(start, progress);
                box.narrow(relaxation.bound(), goal.high());
            }
        }
    }
}
