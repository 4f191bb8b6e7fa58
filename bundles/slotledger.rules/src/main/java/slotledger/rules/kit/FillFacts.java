package slotledger.rules.kit;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.board.FillRow;
import slotledger.model.board.Redundancy;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.board.RedundancyTerms.FillSet;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.rules.spi.Situation;

/** What several fill rules need to know. */
public final class FillFacts {

    private FillFacts() {
    }

    /** "1 module", "4 modules". */
    public static String modules(int count) {
        return count == 1 ? "1 module" : count + " modules";
    }

    /** Whether the table prints rows for so many modules with the installed processors. */
    public static boolean hasRowsForCount(Situation situation) {
        int count = situation.filled().size();
        for (FillRow row : situation.rows()) {
            if (row.slots().size() == count) {
                return true;
            }
        }
        return false;
    }

    /**
     * The sets of sockets filled together, in their order, where the machine keeps memory back against errors and the
     * board has sets for that; they take the place of the usual order and table.
     */
    public static List<FillSet> redundancySets(Situation situation) {
        Redundancy redundancy = situation.setup().redundancy();
        Optional<RedundancyTerms> terms =
                redundancy == Redundancy.NONE ? Optional.empty() : situation.board().terms(redundancy);
        return terms.isEmpty() ? List.of() : terms.get().sets().stream()
                .filter(set -> set.processors() == situation.setup().processors())
                .toList();
    }

    public static boolean hasRedundancySets(Situation situation) {
        return situation.setup().redundancy() != Redundancy.NONE && !redundancySets(situation).isEmpty();
    }

    /** The filled sockets in the order of filling; empty where no order names them all. */
    public static List<String> sequence(Situation situation) {
        List<String> filled = situation.filled();
        List<String> order = hasRedundancySets(situation)
                ? redundancySets(situation).stream().flatMap(set -> set.slots().stream()).toList()
                : situation.order();
        if (!order.containsAll(filled)) {
            List<FillRow> rows = situation.matchingRows();
            order = rows.isEmpty() ? List.of() : rows.get(0).slots();
        }
        List<String> sequence = new ArrayList<>(filled.size());
        for (String label : order) {
            if (filled.contains(label)) {
                sequence.add(label);
            }
        }
        return sequence;
    }

    /** Whether the modules in these slots are alike, each with each: one of unknown facts may be like two others. */
    public static boolean areAlike(Situation situation, List<String> labels) {
        Population population = situation.setup().population();
        for (int i = 1; i < labels.size(); i++) {
            for (int j = 0; j < i; j++) {
                if (population.in(labels.get(i)) instanceof SlotContent.Holds one
                        && population.in(labels.get(j)) instanceof SlotContent.Holds other
                        && !ModuleFacts.areAlike(one.kind(), other.kind())) {
                    return false;
                }
            }
        }
        return true;
    }
}
