package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.task.Progress;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.rules.standard.StandardRules;

/** A rule that is said to be all that keeps a machine from its target is taken away. */
class RuleThatBindsTest {

    private static final Pattern RULE = Pattern.compile("were it not for the rule (\\S+) \\(");

    private static final MemoryRules RULES = StandardRules.create();

    /** All rules but one. */
    private record Without(MemoryRules rules, String rule) implements MemoryRules {

        @Override
        public Weight weigh(Setup setup) {
            return judge(setup).weight();
        }

        @Override
        public Operation operate(Setup setup) {
            return rules.operate(setup);
        }

        @Override
        public Arithmetic workOut(Setup setup) {
            return rules.workOut(setup);
        }

        @Override
        public Verdict judge(Setup setup) {
            Verdict all = rules.judge(setup);
            List<Reason> others = all.reasons().stream().filter(each -> !each.rule().equals(rule)).toList();
            return new Verdict(others.stream().map(Reason::weight).reduce(Weight.PASSES, Weight::worse),
                    all.operation(), others);
        }
    }

    private static boolean canBeHelped(PlanRequest request, MachinePlan machine, MemoryRules rules)
            throws PlannerException {
        Options options = new Planning(rules, new ScipSolver()).list(request, Progress.NONE).options().stream()
                .filter(each -> each.group().machines().contains(machine.machine())).findFirst().orElseThrow();
        return options.candidates().stream().anyMatch(Candidate::onTarget);
    }

    @Test
    void withoutTheRuleTheMachineCouldBeHelped() throws PlannerException {
        TreeSet<String> named = new TreeSet<>();
        int tried = 0;
        for (int seed = 1; seed <= 120; seed++) {
            PlanRequest request = BruteForceTest.fleet(new Random(seed));
            for (MachinePlan machine
                    : new Planning(RULES, new ScipSolver()).plan(request, Progress.NONE).machines()) {
                Matcher rule = RULE.matcher(machine.obstacle().map(Obstacle::message).orElse(""));
                if (rule.find()) {
                    String place = "fleet " + seed + " " + machine.obstacle();
                    assertTrue(!canBeHelped(request, machine, RULES), place);
                    assertTrue(canBeHelped(request, machine, new Without(RULES, rule.group(1))), place);
                    named.add(rule.group(1));
                    tried++;
                }
            }
        }
        System.out.println(tried + " machines, kept back by " + named);
        assertTrue(tried > 3, tried + " " + named);
    }

    @Test
    void theRuleIsNamedWithItsSourceAndNobodyIsToldToBreakIt() throws PlannerException {
        Fixtures made = new Fixtures();
        made.target("pc", 32, 1);
        made.machine("M1", made.board("one", 2, 8, 64, 1), "pc", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(16), 1, -1, 1, 3000);
        Obstacle obstacle = new Planning(RULES, new ScipSolver()).plan(made.request(), Progress.NONE)
                .machines().get(0).obstacle().orElseThrow();
        assertTrue(obstacle.message().contains("With 2 x 16 GB"), obstacle.message());
        assertTrue(obstacle.freedBy().contains("Only a document of the board that says otherwise would allow 2 x 16"),
                obstacle.freedBy());
        assertEquals(1, obstacle.reasons().stream().map(Reason::rule).distinct().count());
    }
}
