package slotledger.app.internal;

import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** Lets the rules judge every population of a plan again. A plan that breaks a rule is a bug: nothing is exported. */
final class PlanCheck {

    private final MemoryRules rules;

    PlanCheck(MemoryRules rules) {
        this.rules = rules;
    }

    void check(Plan plan, Fleet fleet) {
        for (MachinePlan each : plan.machines()) {
            if (!each.isOpened()) {
                continue;
            }
            Machine machine = each.machine();
            Setup after = Setup.of(fleet, machine).with(each.after());
            Verdict verdict = rules.judge(after);
            if (verdict.blocks()) {
                throw new IllegalStateException(
                        "The plan for machine %s must not break a rule: %s. Maybe the planner skipped a rule."
                                .formatted(machine.tag(), verdict.reasons(Weight.BLOCKS).get(0).sentence()));
            }
            if (!rules.operate(after).equals(each.runsAfter())) {
                throw new IllegalStateException(
                        "What the plan promises for machine %s (%s) must be what the rules say (%s)."
                                .formatted(machine.tag(), each.runsAfter(), rules.operate(after)));
            }
        }
    }
}
