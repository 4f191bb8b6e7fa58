package slotledger.planner.internal;

import java.util.HashSet;
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
import slotledger.model.plan.Move;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Station;
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

    /** Everything of a machine that the rules look at. */
    private record Question(
            BoardId board, int processors, Optional<String> processor, Optional<String> operatingSystem,
            Redundancy redundancy, Population after) {
    }

    PlanAudit(PlanRequest request, MemoryRules rules) {
        this.request = request;
        this.rules = rules;
    }

    void check(Plan plan) {
        plan.machines().forEach(this::checkMachine);
        checkModules(plan);
        new MoneyAudit(request).check(plan);
    }

    private void checkMachine(MachinePlan plan) {
        Machine machine = plan.machine();
        require(applied(plan).equals(plan.after()),
                "The moves in machine %s must lead to its population.", machine.tag());
        if (plan.isOpened()) {
            require(!request.policy().leaveAlone().covers(machine), "Machine %s must be left alone.", machine.tag());
            checkRules(plan);
        }
    }

    /** Asks once about machines that are alike. */
    private void checkRules(MachinePlan plan) {
        Machine machine = plan.machine();
        if (allowed.add(new Question(machine.board(), machine.processors(), machine.processor(),
                machine.operatingSystem(), machine.redundancy(), plan.after()))) {
            Verdict verdict = rules.judge(Setup.of(request.fleet(), machine).with(plan.after()));
            require(!verdict.blocks(), "The rules must allow the population of machine %s: %s",
                    machine.tag(), verdict.reasons().isEmpty() ? "" : verdict.reasons().get(0).sentence());
        }
    }

    private static Population applied(MachinePlan plan) {
        Map<String, SlotContent> slots = new LinkedHashMap<>(plan.before().contents());
        for (Move move : plan.moves()) {
            if (move.from() instanceof Station.InSlot slot && slot.machine().equals(plan.machine().tag())) {
                require(plan.before().in(slot.slot()).equals(move.content()),
                        "The slot %s of machine %s must hold what leaves it.", slot.slot(), slot.machine());
                slots.put(slot.slot(), SlotContent.EMPTY);
            }
        }
        for (Move move : plan.moves()) {
            if (move.to() instanceof Station.InSlot slot && slot.machine().equals(plan.machine().tag())) {
                require(slots.get(slot.slot()).isEmpty(),
                        "The slot %s of machine %s must be empty before something enters.",
                        slot.slot(), slot.machine());
                slots.put(slot.slot(), move.content());
            }
        }
        return new Population(slots);
    }

    /** Nothing appears, nothing vanishes: before and bought equals after and left over, for each kind. */
    private void checkModules(Plan plan) {
        Map<SlotContent, Integer> balance = new LinkedHashMap<>();
        request.shelf().pieces().forEach((piece, count) -> balance.merge(SlotContent.of(piece), count, Integer::sum));
        for (MachinePlan machine : plan.machines()) {
            machine.before().contents().values().forEach(content -> balance.merge(content, 1, Integer::sum));
            machine.after().contents().values().forEach(content -> balance.merge(content, -1, Integer::sum));
        }
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
