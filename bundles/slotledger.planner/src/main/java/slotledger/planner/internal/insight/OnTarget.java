package slotledger.planner.internal.insight;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.Choice;

/** Which machines a plan brings on target, to be compared with how many of each class another one does. */
final class OnTarget {

    private final Set<AssetTag> tags = new HashSet<>();

    OnTarget(Plan plan) {
        plan.machines().stream()
                .filter(each -> each.target().isPresent() && each.obstacle().isEmpty())
                .map(MachinePlan::machine).map(Machine::tag).forEach(tags::add);
    }

    /** The first machines of each class that are on target by the other choice only. */
    List<AssetTag> gained(Choice other) {
        List<AssetTag> gained = new ArrayList<>();
        for (int group = 0; group < other.options().size(); group++) {
            List<AssetTag> below = new ArrayList<>(tags(other.options().get(group)));
            int size = below.size();
            below.removeIf(tags::contains);
            int more = (int) WhatIf.onTarget(other, group) - (size - below.size());
            gained.addAll(below.subList(0, Math.max(0, more)));
        }
        return gained.stream().sorted().toList();
    }

    /** The last machines of each class that are on target by the plan only. */
    List<AssetTag> lost(Choice other) {
        List<AssetTag> lost = new ArrayList<>();
        for (int group = 0; group < other.options().size(); group++) {
            List<AssetTag> reached = new ArrayList<>(tags(other.options().get(group)));
            reached.removeIf(tag -> !tags.contains(tag));
            int fewer = reached.size() - (int) WhatIf.onTarget(other, group);
            lost.addAll(reached.subList(Math.min(reached.size(), reached.size() - fewer), reached.size()));
        }
        return lost.stream().sorted().toList();
    }

    /** Without a target nothing is on target. */
    private static List<AssetTag> tags(Options options) {
        return options.group().machines().stream().map(Machine::tag).toList();
    }
}
