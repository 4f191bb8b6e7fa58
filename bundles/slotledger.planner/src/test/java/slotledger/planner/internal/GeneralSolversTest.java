package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.lib.solver.NativeSolver;
import slotledger.lib.solver.NativeSolverException;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.GoalText;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.solver.text.ProgrammeForm;
import slotledger.testkit.Highs;

/**
 * Outside check: general solvers read the written programmes and are asked for the same optimum. GLPK (glpsol) and CBC
 * (cbc) are packages of Debian; a test is skipped where its tool is missing, and fails where
 * SLOTLEDGER_OUTSIDE_REQUIRED is true.
 */
class GeneralSolversTest {

    /** The solvers' own tolerance, relative. */
    private static final double TOLERANCE = 1e-6;
    private static final int SMALL_FLEETS = 10;
    private static final String SECONDS = "3";
    private static final double SECONDS_FOR_HIGHS = 60;

    @TempDir
    Path folder;

    @Test
    void glpkFindsTheSameOptimum() throws Exception {
        require("glpsol");
        compare("glpsol", (form, file, answer) -> List.of("glpsol", form == ProgrammeForm.LP ? "--lp" : "--freemps",
                file.toString(), "--tmlim", SECONDS, "--nointopt", "-o", answer.toString()),
                Pattern.compile("Status: +INTEGER OPTIMAL.*?Objective: +goal = (\\S+)", Pattern.DOTALL));
    }

    @Test
    void cbcFindsTheSameOptimum() throws Exception {
        require("cbc");
        compare("cbc", (form, file, answer) -> List.of("cbc", file.toString(), "-sec", SECONDS, "-ratioGap", "0",
                "-solve", "-solution", answer.toString()),
                Pattern.compile("Optimal - objective value (\\S+)"));
    }

    /** HiGHS is no package of this Debian; here it is the one that comes with OR-Tools, asked by its C interface. */
    @Test
    void highsFindsTheSameOptimum() throws PlannerException, NativeSolverException, IOException {
        Path libraries = NativeSolver.load();
        Assumptions.assumeTrue(Highs.isIn(libraries), "OR-Tools brings no HiGHS for this platform.");
        int agreed = 0;
        for (PlanRequest request : requests()) {
            for (ProgrammeForm form : ProgrammeForm.values()) {
                for (GoalText goal : new Planning(new PlainRules(), new ScipSolver())
                        .goalTexts(request, form, Progress.NONE)) {
                    Path file = Files.writeString(folder.resolve("highs" + form.ending()), goal.text());
                    try (Highs highs = new Highs(libraries)) {
                        highs.read(file);
                        assertEquals(Highs.Ending.OPTIMAL, highs.solve(SECONDS_FOR_HIGHS), goal.goal());
                        assertEquals(goal.value(), highs.value().orElseThrow(), allowed(goal), goal.goal());
                    }
                    agreed++;
                }
            }
        }
        System.out.printf("HiGHS: same optimum of %d programmes%n", agreed);
    }

    private static double allowed(GoalText goal) {
        return Math.max(TOLERANCE, Math.abs(goal.value()) * TOLERANCE);
    }

    private interface Command {
        List<String> of(ProgrammeForm form, Path file, Path answer);
    }

    private void compare(String tool, Command command, Pattern optimum)
            throws PlannerException, IOException, InterruptedException {
        int agreed = 0;
        int cut = 0;
        for (PlanRequest request : requests()) {
            for (ProgrammeForm form : ProgrammeForm.values()) {
                List<GoalText> goals = new Planning(new PlainRules(), new ScipSolver())
                        .goalTexts(request, form, Progress.NONE);
                for (GoalText goal : goals) {
                    assertTrue(goal.value() == goal.bound(), goal.goal() + " is not proven");
                    Path file = Files.writeString(folder.resolve("goal" + form.ending()), goal.text());
                    Path answer = folder.resolve("answer.txt");
                    Files.deleteIfExists(answer);
                    String printed = run(command.of(form, file, answer));
                    assertTrue(Files.exists(answer), tool + " reads no " + form + ": " + printed);
                    Matcher found = optimum.matcher(Files.readString(answer));
                    if (found.find()) {
                        double value = Double.parseDouble(found.group(1));
                        assertTrue(Math.abs(value - goal.value()) <= allowed(goal),
                                "%s says %s, we say %d: %s".formatted(tool, found.group(1), goal.value(), goal.goal()));
                        agreed++;
                    } else {
                        cut++;
                    }
                }
            }
        }
        System.out.printf("%s: same optimum of %d programmes, %d cut by its limit of %s s%n",
                tool, agreed, cut, SECONDS);
        assertTrue(agreed > cut * 4, tool + " closed only " + agreed);
    }

    private static List<PlanRequest> requests() {
        List<PlanRequest> requests = new ArrayList<>();
        for (int seed = 1; seed <= SMALL_FLEETS; seed++) {
            requests.add(BruteForceTest.fleet(new Random(seed)));
        }
        return requests;
    }

    private String run(List<String> command) throws IOException, InterruptedException {
        Path printed = folder.resolve("printed.txt");
        new ProcessBuilder(command).redirectErrorStream(true).redirectOutput(printed.toFile()).start().waitFor();
        return Files.readString(printed);
    }

    private static void require(String tool) {
        boolean isThere = Stream.of(System.getenv("PATH").split(File.pathSeparator))
                .anyMatch(path -> Files.isExecutable(Path.of(path, tool)));
        String message = tool + " is not on the path; install the package that holds it.";
        if (!isThere && Boolean.parseBoolean(System.getenv("SLOTLEDGER_OUTSIDE_REQUIRED"))) {
            Assertions.fail(message);
        }
        Assumptions.assumeTrue(isThere, message);
    }
}
