package slotledger.workbench.internal.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.app.FleetDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Plan;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.session.Opened;

/** Why a machine stands as it does: what the plan says, what the rules say now and after. */
public final class WhyTree {

    private WhyTree() {
    }

    public static List<WhyNode> of(FleetDesk desk, Opened opened, Optional<Plan> plan, AssetTag tag) {
        Optional<Machine> machine = opened.machine(tag);
        if (machine.isEmpty()) {
            return findings(opened, tag);
        }
        List<WhyNode> roots = new ArrayList<>();
        Optional<MachinePlan> own = plan.flatMap(made -> made.find(tag));
        own.ifPresent(made -> roots.add(planned(made)));
        roots.add(judged(Texts.why_now, desk.judge(opened.survey(), machine.get(), machine.get().population())));
        if (!opened.lacks(tag).isEmpty()) {
            roots.add(new WhyNode(Texts.with(Texts.why_lacks, String.join("; ", opened.lacks(tag))), "", List.of()));
        }
        own.filter(MachinePlan::isOpened).ifPresent(made -> roots.add(
                judged(Texts.why_after, desk.judge(opened.survey(), machine.get(), made.after()))));
        roots.addAll(findings(opened, tag));
        return List.copyOf(roots);
    }

    private static List<WhyNode> findings(Opened opened, AssetTag tag) {
        return opened.survey().findings().stream().filter(finding -> finding.machine().equals(Optional.of(tag)))
                .map(finding -> new WhyNode(finding.severity().text() + ": " + finding.message(),
                        finding.place().toString(), List.of(new WhyNode(finding.remedy(), "", List.of()))))
                .toList();
    }

    private static WhyNode planned(MachinePlan plan) {
        List<WhyNode> children = plan.obstacle().map(WhyTree::obstacle).stream().toList();
        return new WhyNode(Texts.with(Texts.why_plan, plan.outcome().text()), "", children);
    }

    private static WhyNode obstacle(Obstacle obstacle) {
        List<WhyNode> children = new ArrayList<>();
        if (!obstacle.freedBy().isBlank()) {
            children.add(new WhyNode(Texts.with(Texts.why_freed_by, obstacle.freedBy()), "", List.of()));
        }
        obstacle.reasons().forEach(reason -> children.add(of(reason)));
        return new WhyNode(Texts.with(Texts.why_obstacle, obstacle.kind().text(), obstacle.message()), "", children);
    }

    private static WhyNode judged(String when, Verdict verdict) {
        String what = verdict.weight() == Weight.PASSES ? Texts.why_all_pass
                : Texts.with(Texts.why_worst, marked(verdict.weight()));
        return new WhyNode(Texts.with(Texts.why_judged, when, what), "",
                verdict.reasons().stream().map(WhyTree::of).toList());
    }

    private static WhyNode of(Reason reason) {
        List<WhyNode> children = new ArrayList<>();
        reason.missing().ifPresent(fact ->
                children.add(new WhyNode(Texts.with(Texts.why_missing, fact.text()), "", List.of())));
        if (!reason.remedy().isBlank()) {
            boolean toFind = reason.missing().isPresent();
            children.add(new WhyNode(
                    toFind ? Texts.with(Texts.why_find, reason.remedy()) : reason.remedy(), "", List.of()));
        }
        reason.because().forEach(finer -> children.add(of(finer)));
        return new WhyNode(marked(reason.weight()) + ": " + reason.sentence(), reason.source().toString(), children);
    }

    private static String marked(Weight weight) {
        String symbol = switch (weight) {
            case PASSES -> "✓";
            case CAUTION -> "!";
            case LOWERS -> "▼";
            case UNKNOWN -> "?";
            case BLOCKS -> "✗";
        };
        return symbol + " " + weight.text();
    }
}
