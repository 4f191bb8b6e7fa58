package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.Choice;
import slotledger.planner.internal.order.SlotChanges;

/** Gives the machines of a class what an earlier plan gave them, as far as that is still to be given. */
final class Earlier {

    private final Options options;
    private final int[] left;
    private final List<Job> jobs = new ArrayList<>();

    Earlier(Choice choice, int group, Map<AssetTag, Population> planned) {
        options = choice.options().get(group);
        left = new int[options.candidates().size()];
        for (int i = 0; i < left.length; i++) {
            left[i] = choice.count(group, i);
        }
        List<Machine> others = new ArrayList<>();
        for (Machine machine : options.group().machines()) {
            int number = number(planned.get(machine.tag()));
            if (number >= 0 && left[number] > 0) {
                give(machine, number);
            } else {
                others.add(machine);
            }
        }
        others.forEach(machine -> give(machine, first()));
    }

    private int number(Population after) {
        for (int i = 0; i < left.length && after != null; i++) {
            if (left[i] > 0 && options.candidates().get(i).after().equals(after)) {
                return i;
            }
        }
        return -1;
    }

    /** One that opens the machine, where there is one left. */
    private int first() {
        for (int i = 1; i < left.length; i++) {
            if (left[i] > 0) {
                return i;
            }
        }
        return 0;
    }

    private void give(Machine machine, int number) {
        left[number]--;
        Candidate candidate = options.candidates().get(number);
        jobs.add(new Job(machine, options, candidate, SlotChanges.of(options.group().now(), candidate.after())));
    }

    List<Job> jobs() {
        return jobs;
    }
}
