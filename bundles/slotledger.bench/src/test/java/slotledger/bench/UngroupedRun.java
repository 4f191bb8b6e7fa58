package slotledger.bench;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import slotledger.bench.fleet.FleetCase;
import slotledger.bench.fleet.Fleets;
import slotledger.lib.solver.NativeSolver;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.internal.Listed;
import slotledger.planner.internal.Planning;
import slotledger.planner.internal.choice.MachineClass;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.PlanModel;
import slotledger.rules.standard.StandardRules;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;

/**
 * Gives the whole fleet to a general solver as it would be written down without thinking: one row a machine, least
 * money, every machine that can be helped on its target. Prints a line of JSON with the gap it proves in its time.
 */
public final class UngroupedRun {

    private static final long MILLIS = 1000;

    private UngroupedRun() {
    }

    /**
     * Solves.
     *
     * @param arguments case, number of machines, which of all such fleets, name of the solver, seconds
     */
    public static void main(String[] arguments) throws Exception {
        int size = Integer.parseInt(arguments[1]);
        int seconds = Integer.parseInt(arguments[4]);
        PlanRequest request = Fleets.request(FleetCase.valueOf(arguments[0]), size, Long.parseLong(arguments[2]));
        Listed listed = new Planning(StandardRules.create(), new ScipSolver()).list(request, Progress.NONE);
        PlanModel model = new PlanModel(request, listed.stock(), single(listed.options()));
        NativeSolver.load();
        MPSolver solver = MPSolver.createSolver(arguments[3]);
        build(model, solver);
        solver.setTimeLimit(seconds * MILLIS);
        MPSolver.ResultStatus status = solver.solve();
        boolean found = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
        double value = found ? solver.objective().value() : 0;
        double bound = solver.objective().bestBound();
        System.out.println(String.format(Locale.ROOT, """
                {"solver": "%s", "case": "%s", "machines": %d, "limit": %d, "status": "%s", "rows": %d, \
                "columns": %d, "cost": %.0f, "costBound": %.0f, "gap": %s}""",
                arguments[3], arguments[0], size, seconds, status, solver.numConstraints(), solver.numVariables(),
                value, bound, found ? String.format(Locale.ROOT, "%.6f", (value - bound) / value) : "null"));
    }

    private static List<Options> single(List<Options> grouped) {
        List<Options> single = new ArrayList<>();
        for (Options each : grouped) {
            MachineClass group = each.group();
            group.machines().forEach(machine -> single.add(new Options(
                    new MachineClass(group.setup(), group.target(), group.leaveAlone(), group.costCentre(),
                            group.decided(),
                            List.of(machine)),
                    each.board(), each.candidates(), each.fitting())));
        }
        return single;
    }

    private static void build(PlanModel model, MPSolver solver) {
        IntegerProgramme programme = model.programme();
        MPVariable[] variables = new MPVariable[programme.size()];
        for (int i = 0; i < variables.length; i++) {
            variables[i] = solver.makeIntVar(
                    low(programme.low(i)), high(programme.high(i)), "");
        }
        for (IntegerProgramme.Row row : programme.rows()) {
            MPConstraint made = solver.makeConstraint(low(row.low()), high(row.high()));
            row.sum().forEach((variable, factor) -> made.setCoefficient(variables[variable], factor));
        }
        Linear missed = model.goals().get(0).sum();
        MPConstraint none = solver.makeConstraint(MPSolver.infinity() * -1, 0);
        missed.forEach((variable, factor) -> none.setCoefficient(variables[variable], factor));
        MPObjective cost = solver.objective();
        model.goals().get(1).sum().forEach((variable, factor) -> cost.setCoefficient(variables[variable], factor));
        cost.setMinimization();
    }

    private static double low(long bound) {
        return bound == IntegerProgramme.NO_LOW ? -MPSolver.infinity() : bound;
    }

    private static double high(long bound) {
        return bound == IntegerProgramme.NO_HIGH ? MPSolver.infinity() : bound;
    }
}
