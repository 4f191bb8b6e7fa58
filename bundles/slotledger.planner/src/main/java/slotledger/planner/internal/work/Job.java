package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import slotledger.model.machine.Machine;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.Choice;
import slotledger.planner.internal.order.Opening;
import slotledger.planner.internal.order.SlotChanges;

/**
 * One machine with the population it gets.
 *
 * @param machine   the machine
 * @param options   what could be done with machines like it
 * @param candidate what is done with it
 * @param changes   the moves in its slots
 */
public record Job(Machine machine, Options options, Candidate candidate, SlotChanges changes) {

    public Job {
        Objects.requireNonNull(machine, "machine");
        Objects.requireNonNull(options, "options");
        Objects.requireNonNull(candidate, "candidate");
        if (changes.touches() != candidate.touches()) {
            throw new IllegalStateException("The moves (%d) in machine %s must be as many as planned (%d)."
                    .formatted(changes.touches(), machine.tag(), candidate.touches()));
        }
    }

    /** Gives each machine of each class its population: opened ones first, in the order of asset tags. */
    static List<Job> assign(Choice choice) {
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

    /** What happens to the machine, for the order of work. */
    Opening opening() {
        return new Opening(
                machine.tag(), machine.where(), options.group().costCentre(), options.group().now(), changes);
    }
}
