package slotledger.export.internal.round;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.export.internal.text.Texts;
import slotledger.export.internal.text.Words;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/** The work on one machine in a few words. */
public final class Tasks {

    private Tasks() {
    }

    /** "take out 1 x 4 GB DDR4-2400, move 1 module, put in 2 x 8 GB DDR4-2666". */
    public static String of(MachinePlan plan) {
        Map<String, Integer> out = new LinkedHashMap<>();
        Map<String, Integer> in = new LinkedHashMap<>();
        int moved = 0;
        int fillers = 0;
        for (Move move : plan.moves()) {
            boolean leaves = isHere(move.from(), plan);
            boolean arrives = isHere(move.to(), plan);
            if (leaves && arrives) {
                boolean isFiller = move.content() instanceof SlotContent.Filled;
                moved += isFiller ? 0 : 1;
                fillers += isFiller ? 1 : 0;
            } else if (leaves) {
                out.merge(Words.brief(move.content()), 1, Integer::sum);
            } else {
                in.merge(Words.brief(move.content()), 1, Integer::sum);
            }
        }
        List<String> parts = new ArrayList<>();
        out.forEach((kind, count) -> parts.add("take out " + count + " x " + kind));
        if (moved > 0) {
            parts.add("move " + Texts.count(moved, "module", "modules"));
        }
        if (fillers > 0) {
            parts.add("move " + Texts.count(fillers, "filler", "fillers"));
        }
        in.forEach((kind, count) -> parts.add("put in " + count + " x " + kind));
        return String.join(", ", parts);
    }

    private static boolean isHere(Station station, MachinePlan plan) {
        return station instanceof Station.InSlot in && in.machine().equals(plan.machine().tag());
    }
}
