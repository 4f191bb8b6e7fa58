package slotledger.planner.internal;

import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.model.board.BoardId;
import slotledger.model.board.Redundancy;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.verdict.Verdict;
import slotledger.planner.PlanRequest;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/**
 * Checks a finished plan against the request in exact arithmetic, knowing nothing of how it was found. A plan that
 * fails is a programming error.
 */
final class PlanAudit {

    private final PlanRequest request;
    private final MemoryRules rules;
    private final Set<Question> allowed = new HashSet<>();
    /** Populations are asked about by number, since comparing them is dear; equal ones have one number. */
    private final Map<Population, Integer> numbers = new HashMap<>();
    private final Map<Population, Integer> numbersOfSame = new IdentityHashMap<>();

    /** Everything of a machine that the rules look at. */
    private record Question(
            BoardId board, int processors, Optional<String> processor, Optional<String> operatingSystem,
            Redundancy redundancy, int after) {
    }

    PlanAudit(PlanRequest request, MemoryRules rules) {
        this.request = request;
        this.rules = rules;
    }

    void check(Plan plan) {
        plan.machines().parallelStream().forEach(PlanAudit::checkMoves);
        plan.machines().forEach(this::checkMachine);
        checkModules(plan);
        new MoneyAudit(request).check(plan);
        new ChoicesAudit(request.choices()).check(plan);
    }

    /** Each machine by itself, so that several can be looked at at a time. */
    private static void checkMoves(MachinePlan plan) {
        if (plan.before() != plan.after() || plan.isOpened()) {
            require(MovesAudit.leadsToAfter(plan), "The moves in machine %s must lead to its population.",
                    plan.machine().tag());
        }
    }

    private void checkMachine(MachinePlan plan) {
        if (plan.isOpened()) {
            Machine machine = plan.machine();
            require(!request.policy().leaveAlone().covers(machine), "Machine %s must be left alone.", machine.tag());
            checkRules(plan);
        }
    }

    /** Asks once about machines that are alike. */
    private void checkRules(MachinePlan plan) {
        Machine machine = plan.machine();
        if (allowed.add(new Question(machine.board(), machine.processors(), machine.processor(),
                machine.operatingSystem(), machine.redundancy(), number(plan.after())))) {
            Verdict verdict = rules.judge(Setup.of(request.fleet(), machine).with(plan.after()));
            require(!verdict.blocks(), "The rules must allow the population of machine %s: %s",
                    machine.tag(), verdict.reasons().isEmpty() ? "" : verdict.reasons().get(0).sentence());
        }
    }

    private int number(Population population) {
        return numbersOfSame.computeIfAbsent(population, some -> {
            Integer known = numbers.putIfAbsent(some, numbers.size());
            return known == null ? numbers.size() - 1 : known;
        });
    }

    /** Nothing appears, nothing vanishes: before and bought equals after and left over, for each kind. */
    private void checkModules(Plan plan) {
        Map<SlotContent, Integer> balance = new LinkedHashMap<>();
        request.shelf().pieces().forEach((piece, count) -> balance.merge(SlotContent.of(piece), count, Integer::sum));
        Map<Population, int[]> machines = new IdentityHashMap<>();
        for (MachinePlan machine : plan.machines()) {
            machines.computeIfAbsent(machine.before(), unused -> new int[1])[0]++;
            machines.computeIfAbsent(machine.after(), unused -> new int[1])[0]--;
        }
        machines.forEach((population, count) -> population.contents().values()
                .forEach(content -> balance.merge(content, count[0], Math::addExact)));
        for (Purchase line : plan.purchases()) {
            balance.merge(SlotContent.of(line.offer().piece()), line.modules(), Integer::sum);
        }
        for (Leftover leftover : plan.leftovers()) {
            balance.merge(leftover.content(), -leftover.count(), Integer::sum);
        }
        balance.remove(SlotContent.EMPTY);
        balance.forEach((content, count) ->
                require(count == 0, "The modules %s must go up exactly; the difference is %d.", content, count));
    }

    static void require(boolean holds, String message, Object... values) {
        if (!holds) {
            throw new IllegalStateException(message.formatted(values) + " Maybe the planner has a fault.");
        }
    }
}
