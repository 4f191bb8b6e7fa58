package slotledger.bench;

import com.google.ortools.linearsolver.MPConstraint;
import com.google.ortools.linearsolver.MPObjective;
import com.google.ortools.linearsolver.MPSolver;
import com.google.ortools.linearsolver.MPVariable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import slotledger.bench.fleet.FleetCase;
import slotledger.bench.fleet.Fleets;
import slotledger.lib.solver.NativeSolver;
import slotledger.lib.solver.NativeSolverException;
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
import slotledger.solver.text.ProgrammeForm;
import slotledger.testkit.Highs;

/**
 * Gives the whole fleet to a general solver as it would be written down without thinking: one row a machine, least
 * money, every machine that can be helped on its target. Prints a line of JSON with the gap it proves in its time.
 */
public final class UngroupedRun {

    private static final long MILLIS = 1000;

    private record Answer(String status, OptionalDouble value, double bound) {
        String gap() {
            return value.isEmpty() ? "null"
                    : String.format(Locale.ROOT, "%.6f", (value.getAsDouble() - bound) / value.getAsDouble());
        }
    }

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
        model.programme().atMost("missed", model.goals().get(0).sum(), 0);
        Answer answer = arguments[3].equals("HIGHS") ? highs(model, seconds) : ortools(model, arguments[3], seconds);
        System.out.println(String.format(Locale.ROOT, """
                {"solver": "%s", "case": "%s", "machines": %d, "limit": %d, "status": "%s", "rows": %d, \
                "columns": %d, "cost": %.0f, "costBound": %.0f, "gap": %s}""",
                arguments[3], arguments[0], size, seconds, answer.status(), model.programme().rows().size(),
                model.programme().size(), answer.value().orElse(0), answer.bound(), answer.gap()));
    }

    private static Answer ortools(PlanModel model, String name, int seconds) throws NativeSolverException {
        NativeSolver.load();
        MPSolver solver = MPSolver.createSolver(name);
        build(model, solver);
        solver.setTimeLimit(seconds * MILLIS);
        MPSolver.ResultStatus status = solver.solve();
        boolean found = status == MPSolver.ResultStatus.OPTIMAL || status == MPSolver.ResultStatus.FEASIBLE;
        return new Answer(status.name(), found ? OptionalDouble.of(solver.objective().value()) : OptionalDouble.empty(),
                solver.objective().bestBound());
    }

    private static Answer highs(PlanModel model, int seconds) throws NativeSolverException, IOException {
        Path file = Files.createTempFile("ungrouped", ProgrammeForm.MPS.ending());
        try (Highs highs = new Highs(NativeSolver.load())) {
            Files.writeString(file,
                    ProgrammeForm.MPS.text(model.programme(), model.goals().get(1).sum(), "one row a machine"));
            highs.read(file);
            Highs.Ending ending = highs.solve(seconds);
            return new Answer(ending.name(), highs.value(), highs.bound());
        } finally {
            Files.delete(file);
        }
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
