package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.ToIntFunction;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.model.Choice;

/** Gives the machines of a class what an earlier plan gave them, as far as that is still to be given. */
final class Earlier {

    private final Options options;
    private final Map<AssetTag, Population> planned;
    private final int[] left;
    private final Assignment[] assignments;

    Earlier(Choice choice, int group, Map<AssetTag, Population> planned) {
        this.options = choice.options().get(group);
        this.planned = planned;
        left = new int[options.candidates().size()];
        assignments = new Assignment[left.length];
        for (int i = 0; i < left.length; i++) {
            left[i] = choice.count(group, i);
            assignments[i] = left[i] == 0 ? null : Assignment.of(options, i);
        }
    }

    /** Enters what each machine gets at its place. */
    void give(ToIntFunction<Machine> place, Assignment[] all) {
        List<Machine> others = new ArrayList<>();
        for (Machine machine : options.group().machines()) {
            int number = number(planned.get(machine.tag()));
            if (number >= 0) {
                all[place.applyAsInt(machine)] = take(number);
            } else {
                others.add(machine);
            }
        }
        others.forEach(machine -> all[place.applyAsInt(machine)] = take(first()));
    }

    private Assignment take(int number) {
        left[number]--;
        return assignments[number];
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
}
