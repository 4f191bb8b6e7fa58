package slotledger.cli.internal;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Settlement;
import slotledger.model.difference.Difference;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;

/** What arrived and what can be done with it, in words and as facts. */
final class ArrivedText {

    private static final int WAITING_SHOWN = 10;

    private ArrivedText() {
    }

    static void lines(Answer.Builder answer, Delivery delivery) {
        for (Delivery.Line line : delivery.lines()) {
            answer.item("Order", line.purchase().offer().id() + ": " + line.state().text() + ", " + line.usable()
                    + " of " + line.purchase().modules()
                    + (line.unusable() == 0 ? "" : ", " + line.unusable() + " more not usable"));
        }
        answer.fact("lines", delivery.lines().stream().map(ArrivedText::facts).toList());
        answer.fact("complete", delivery.isComplete());
    }

    private static Map<String, Object> facts(Delivery.Line line) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("offer", line.purchase().offer().id());
        facts.put("state", line.state().name());
        facts.put("ordered", line.purchase().modules());
        facts.put("usable", line.usable());
        facts.put("unusable", line.unusable());
        return facts;
    }

    static void machines(Answer.Builder answer, Delivery delivery) {
        List<String> now = delivery.now().work().stream().map(MachinePlan::machine)
                .map(machine -> machine.tag().value()).toList();
        answer.item("Now", now.size() + " machines can be done, " + delivery.done().size() + " are done, "
                + delivery.waiting().size() + " wait");
        delivery.waiting().stream().limit(WAITING_SHOWN).forEach(waiting -> answer.item("Waits", text(waiting)));
        if (delivery.waiting().size() > WAITING_SHOWN) {
            answer.item("", (delivery.waiting().size() - WAITING_SHOWN) + " more wait; --json names them all");
        }
        int missing = delivery.lines().stream().mapToInt(Delivery.Line::missing).sum();
        answer.item("Plan", missing == 0 ? "it stays: everything that was ordered is there"
                : "it stays if " + missing + " modules are still delivered or replaced; if not, plan again with what "
                        + "is there, by --final");
        answer.fact("now", now).fact("missing", missing);
        answer.fact("waiting", delivery.waiting().stream().map(each -> each.machine().value()).toList());
    }

    static void settlement(Answer.Builder answer, Settlement settled) {
        Plan plan = settled.plan();
        List<String> now = plan.work().stream().map(machine -> machine.machine().tag().value()).toList();
        List<String> without = plan.machines().stream().filter(machine -> machine.obstacle().isPresent())
                .map(machine -> machine.machine().tag().value()).toList();
        int missing = settled.delivery().lines().stream().mapToInt(Delivery.Line::missing).sum();
        answer.item("Now", now.size() + " machines can be done, " + settled.delivery().done().size() + " are done; "
                + Difference.onTarget(plan) + " are on target then, " + without.size() + " with a target are not");
        answer.item("Money", "what was ordered stays spent: " + plan.spending().payable()
                + (missing == 0 ? "" : "; " + missing + " modules did not come, ask the suppliers for their price"));
        answer.fact("now", now).fact("missing", missing).fact("notOnTarget", without);
        Answer.Builder part = new Answer.Builder();
        new DifferenceLines(Difference.of(settled.before(), settled.plan())).report(part, WAITING_SHOWN);
        Answer changes = part.end(ExitCode.OK);
        answer.line("").line("What changed against the plan").lines(changes).line("")
                .fact("changes", changes.facts());
    }

    private static String text(Delivery.Waiting waiting) {
        return waiting.machine() + " for " + waiting.needs().entrySet().stream()
                .map(need -> need.getValue() + " x " + need.getKey()).sorted().collect(Collectors.joining(", "));
    }
}
