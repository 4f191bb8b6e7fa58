package slotledger.planner.internal.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.module.Piece;
import slotledger.model.trade.Choices;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Lab;
import slotledger.planner.internal.choice.Options;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;

/**
 * What people decided, as rows and goals. A pinned class has two populations: that of the pin, and the present one,
 * which counts as the worst miss of all. For each lab a choice among what its machines can have in common, or to change
 * nothing, which is a miss where the lab is mixed now. At most so many machines are opened.
 */
final class HumanChoices {

    private static final int LABS = 4;

    /**
     * What becomes of a lab.
     *
     * @param stays   1 where nothing is changed
     * @param isMixed whether its machines hold different modules now
     */
    private record Decision(int stays, boolean isMixed) {
    }

    private final IntegerProgramme programme;
    private final List<Options> options;
    private final int[][] machines;
    private final List<Decision> decisions = new ArrayList<>();

    HumanChoices(IntegerProgramme programme, Choices choices, List<Options> options, int[][] machines) {
        this.programme = programme;
        this.options = options;
        this.machines = machines;
        if (!choices.uniform().isEmpty()) {
            Lab.of(options).forEach(this::addLab);
        }
        if (choices.mostOpened().isPresent()) {
            Linear opened = new Linear();
            for (int group = 0; group < machines.length; group++) {
                for (int i = 0; i < machines[group].length; i++) {
                    if (candidate(group, i).opens()) {
                        opened.add(machines[group][i], 1);
                    }
                }
            }
            programme.joinAtMost("machines opened", opened, choices.mostOpened().getAsInt());
        }
    }

    private Candidate candidate(int group, int number) {
        return options.get(group).candidates().get(number);
    }

    /** Each class of the lab gets, as a whole, what was chosen for the lab. */
    private void addLab(Lab lab) {
        Map<Map<Piece, Integer>, Integer> chosen = new LinkedHashMap<>();
        Linear one = new Linear();
        for (Map<Piece, Integer> contents : lab.common(options)) {
            chosen.put(contents, programme.choice("%s of board %s with %s".formatted(
                    lab.room(), lab.board(), Lab.text(contents)), LABS));
            one.add(chosen.get(contents), 1);
        }
        if (chosen.isEmpty()) {
            return;
        }
        int stays = programme.choice("%s of board %s stays".formatted(lab.room(), lab.board()), LABS);
        programme.equal("one for all machines of " + lab.room(), one.add(stays, 1), 1);
        decisions.add(new Decision(stays, lab.isMixed(options)));
        lab.classes().forEach(group -> addClass(group, chosen, stays));
    }

    private void addClass(int group, Map<Map<Piece, Integer>, Integer> chosen, int stays) {
        long size = options.get(group).group().size();
        Map<Map<Piece, Integer>, Linear> rows = new LinkedHashMap<>();
        chosen.forEach((contents, choice) -> rows.put(contents, new Linear().add(choice, -size)));
        for (int i = 0; i < machines[group].length; i++) {
            Map<Piece, Integer> contents = Lab.contents(candidate(group, i).after());
            Linear row = rows.computeIfAbsent(contents, unused -> new Linear());
            row.add(machines[group][i], 1);
            if (!candidate(group, i).opens() && !options.get(group).isPinned()) {
                row.add(stays, -size);
            }
        }
        if (!options.get(group).isPinned()) {
            rows.forEach((contents, row) -> programme.equal("all machines of class " + group, row, 0));
        } else {
            chosen.forEach((contents, choice) -> programme.atMost("the pinned machine of class " + group,
                    new Linear().add(choice, 1).add(pinnedTo(group, contents), -1), 0));
        }
    }

    /** The machines of a pinned class that hold this in the end. */
    private Linear pinnedTo(int group, Map<Piece, Integer> contents) {
        Linear held = new Linear();
        for (int i = 0; i < machines[group].length; i++) {
            if (Lab.contents(candidate(group, i).after()).equals(contents)) {
                held.add(machines[group][i], 1);
            }
        }
        return held;
    }

    /**
     * Adds what counts more than any number of targets: mixed labs, and still more than those, pins that are not kept.
     *
     * @param missed weighted machines below target
     */
    void addMissed(Linear missed) {
        long targets = 1;
        for (Options each : options) {
            targets = Math.addExact(targets, Math.multiplyExact(each.group().weight(), each.group().size()));
        }
        for (Decision lab : decisions) {
            if (lab.isMixed()) {
                missed.add(lab.stays(), targets);
            }
        }
        long labs = Math.multiplyExact(targets, decisions.size() + 1L);
        for (int group = 0; group < machines.length; group++) {
            if (options.get(group).isPinned() && machines[group].length > 1) {
                missed.add(machines[group][0], labs);
            }
        }
    }

    /** Sets what belongs to the values where nothing is done. */
    void nothingDone(long[] values) {
        decisions.forEach(lab -> values[lab.stays()] = 1);
    }
}
