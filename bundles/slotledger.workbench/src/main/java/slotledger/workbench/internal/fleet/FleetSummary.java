package slotledger.workbench.internal.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.app.Survey;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.Opened;

/** One line about the whole fleet. */
final class FleetSummary {

    private FleetSummary() {
    }

    static String of(Optional<Opened> opened, Optional<Plan> plan) {
        if (opened.isEmpty()) {
            return Texts.summary_nothing_open;
        }
        Survey survey = opened.get().survey();
        List<String> parts = new ArrayList<>();
        parts.add(Texts.with(Texts.summary_machines, survey.fleet().machines().size() + survey.unresolved().size()));
        if (!survey.unresolved().isEmpty()) {
            parts.add(Texts.with(Texts.summary_unresolved, survey.unresolved().size()));
        }
        plan.ifPresent(made -> describe(made, parts));
        return String.join(" · ", parts);
    }

    private static void describe(Plan plan, List<String> parts) {
        parts.add(Texts.with(Texts.summary_on_target,
                plan.count(Outcome.ON_TARGET) + plan.count(Outcome.DONOR), plan.count(Outcome.REACHES_TARGET)));
        long below = plan.count(Outcome.IMPROVED) + plan.count(Outcome.NOT_HELPED);
        if (below > 0) {
            parts.add(Texts.with(Texts.summary_below, below));
        }
        parts.add(Texts.with(Texts.summary_cost, plan.spending().payable(), plan.spending().labour()));
        parts.add(plan.optimality().isProven() ? Texts.summary_proven : Texts.summary_not_proven);
    }
}
