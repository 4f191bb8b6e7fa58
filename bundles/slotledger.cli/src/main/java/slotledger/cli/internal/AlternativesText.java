package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Population;
import slotledger.model.plan.Alternative;
import slotledger.model.plan.Figures;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;

/** The alternatives of a machine in words and as facts. */
final class AlternativesText {

    private static final int SHOWN = 10;

    private final MachinePlan machine;
    private final Figures plan;

    AlternativesText(Plan plan, AssetTag tag) {
        this.machine = plan.find(tag).orElseThrow();
        this.plan = Figures.of(plan);
    }

    void report(List<Alternative> alternatives, Answer.Builder answer) {
        answer.item("Machine", machine.machine().tag() + ", " + machine.machine().role() + ": "
                + machine.outcome().text());
        answer.wrapped("Now", contents(machine.before()));
        alternatives.stream().filter(Alternative::isPlanned).forEach(each -> answer.wrapped("Planned", contents(
                each.after()) + "; the whole plan costs " + plan.cost()));
        List<Alternative> others = alternatives.stream().filter(each -> !each.isPlanned()).toList();
        int number = 0;
        for (Alternative each : others.subList(0, Math.min(SHOWN, others.size()))) {
            number++;
            answer.line("").wrapped("" + number, contents(each.after())).wrapped("", outcome(each));
        }
        if (others.isEmpty()) {
            answer.line("").item("Others", "none that is allowed and worth considering");
        } else if (others.size() > SHOWN) {
            answer.line("").item("", (others.size() - SHOWN) + " more; --json lists all");
        }
        answer.line("").wrapped("Reading", "Populations that take more of every module and more work than another are "
                + "left out. \"Planned anew\" means that all other machines and the order were planned for it; else "
                + "all others end as planned, and only the order is made anew.");
        answer.fact("machine", machine.machine().tag().value());
        answer.fact("plan", FiguresText.facts(plan));
        List<Map<String, Object>> facts = new ArrayList<>();
        alternatives.forEach(each -> facts.add(fact(each)));
        answer.fact("alternatives", facts);
    }

    private String outcome(Alternative each) {
        String target = each.onTarget() ? "" : "stays below its target; ";
        String how = each.replanned() ? "planned anew" : "all others as planned";
        return target + each.figures().map(figures -> FiguresText.change(figures, plan) + " in all, " + how
                        + (each.replanned() && !figures.isProven() ? " (a better one may exist)" : ""))
                .orElse("stock or money does not reach for it, " + how);
    }

    /** "DIMM1 8 GB ..., DIMM2 empty". */
    private static String contents(Population population) {
        return population.contents().entrySet().stream()
                .map(slot -> slot.getKey() + " " + slot.getValue())
                .collect(Collectors.joining(", "));
    }

    private static Map<String, Object> fact(Alternative each) {
        Map<String, Object> fact = new LinkedHashMap<>();
        Map<String, String> slots = new LinkedHashMap<>();
        each.after().contents().forEach((slot, content) -> slots.put(slot, content.toString()));
        fact.put("slots", slots);
        fact.put("memory", each.runs().usable().toString());
        fact.put("onTarget", each.onTarget());
        fact.put("planned", each.isPlanned());
        fact.put("plannedAnew", each.replanned());
        each.figures().ifPresent(figures -> fact.put("figures", FiguresText.facts(figures)));
        return fact;
    }
}
