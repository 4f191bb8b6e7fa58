package slotledger.planner.internal.model;

import java.util.Arrays;
import java.util.List;
import slotledger.planner.internal.choice.Options;

/**
 * What the programme decided.
 *
 * @param options of each class
 * @param counts  by class and candidate: how many machines get it
 * @param packs   by offer
 * @param uses    by offer and cost centre (the first is for machines without a budget of their own): how many modules
 *                bought go into machines
 * @param centres names of the cost centres, the first empty
 */
public record Choice(List<Options> options, int[][] counts, int[] packs, int[][] uses, List<String> centres) {

    public Choice {
        options = List.copyOf(options);
        counts = Arrays.stream(counts).map(int[]::clone).toArray(int[][]::new);
        packs = packs.clone();
        uses = Arrays.stream(uses).map(int[]::clone).toArray(int[][]::new);
        centres = List.copyOf(centres);
    }

    public int count(int group, int candidate) {
        return counts[group][candidate];
    }

    public int packs(int offer) {
        return packs[offer];
    }

    public int uses(int offer, int centre) {
        return uses[offer][centre];
    }
}
