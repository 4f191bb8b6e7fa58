package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.module.Piece;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.Choice;

/**
 * One machine with the population it gets.
 *
 * @param machine   the machine
 * @param options   what could be done with machines like it
 * @param candidate what is done with it
 * @param changes   the moves in its slots
 */
public record Job(Machine machine, Options options, Candidate candidate, SlotChanges changes) {

    /** The way a technician walks. */
    static final Comparator<Job> WALK = Comparator
            .comparing((Job job) -> job.machine().where())
            .thenComparing(job -> job.machine().tag());

    public Job {
        Objects.requireNonNull(machine, "machine");
        Objects.requireNonNull(options, "options");
        Objects.requireNonNull(candidate, "candidate");
        if (changes.touches() != candidate.touches()) {
            throw new IllegalStateException("The moves (%d) in machine %s must be as many as planned (%d)."
                    .formatted(changes.touches(), machine.tag(), candidate.touches()));
        }
    }

    /**
     * Gives each machine of each class its population: what an earlier plan gave it, where some get that; then opened
     * ones first, in the order of asset tags.
     */
    static List<Job> assign(Choice choice, Optional<Plan> before) {
        if (before.isEmpty()) {
            return assign(choice);
        }
        Map<AssetTag, Population> planned = before.get().machines().stream().collect(Collectors.toMap(
                plan -> plan.machine().tag(), MachinePlan::after, (one, other) -> one));
        List<Job> jobs = new ArrayList<>();
        for (int group = 0; group < choice.options().size(); group++) {
            jobs.addAll(new Earlier(choice, group, planned).jobs());
        }
        return jobs;
    }

    private static List<Job> assign(Choice choice) {
        List<Job> jobs = new ArrayList<>();
        for (int group = 0; group < choice.options().size(); group++) {
            Options options = choice.options().get(group);
            int next = 0;
            for (int i = 1; i <= options.candidates().size(); i++) {
                int number = i % options.candidates().size();
                Candidate candidate = options.candidates().get(number);
                SlotChanges changes = SlotChanges.of(options.group().now(), candidate.after());
                for (int count = choice.count(group, number); count > 0; count--) {
                    jobs.add(new Job(options.group().machines().get(next++), options, candidate, changes));
                }
            }
        }
        return jobs;
    }

    boolean isOpened() {
        return candidate.opens();
    }

    /** On target before and only opened for its modules. */
    boolean isDonor() {
        return isOpened() && options.isOnTargetNow();
    }

    /** How many modules and fillers of each kind come from outside, in slot order. */
    Map<Piece, Integer> needs() {
        Map<Piece, Integer> needs = new LinkedHashMap<>();
        changes.in().values().forEach(content -> needs.merge(content.piece().orElseThrow(), 1, Integer::sum));
        return needs;
    }
}
