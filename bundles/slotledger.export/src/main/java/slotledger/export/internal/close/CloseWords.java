package slotledger.export.internal.close;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import slotledger.model.machine.AssetTag;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.LeftOver;

/** What report and workbook of a close-out say alike. */
public final class CloseWords {

    private static final int NAMED = 8;

    private CloseWords() {
    }

    /** "12 of 40 machines with a target were on it before, 38 by the plan, 37 are by the proof; 1 was not seen". */
    public static String targets(CloseOut close) {
        CloseOut.RoleCount all = close.all();
        String proved = close.closing().isEmpty() ? "nothing is proved yet"
                : all.proved() + " are by the proof" + (all.unknown() == 0 ? ""
                        : "; " + all.unknown() + " were not seen");
        return "Of %d machines with a target %d were on it before, %d should be after the work, %s."
                .formatted(all.machines(), all.before(), all.planned(), proved);
    }

    /** Where a leftover lies. */
    public static String place(LeftOver left) {
        List<String> parts = new ArrayList<>();
        if (!left.bags().isEmpty()) {
            parts.add("in the bags of " + names(left.bags()));
        }
        if (!left.inside().isEmpty()) {
            parts.add("still in " + names(left.inside()));
        }
        if (left.other() > 0) {
            parts.add(left.other() + " spares, rests of packs, or on the shelf before");
        }
        return String.join("; ", parts);
    }

    public static String way(LeftOver left) {
        return left.disposal() ? "disposal or sale" : "shelf";
    }

    private static String names(Map<AssetTag, Integer> counts) {
        List<String> names = counts.entrySet().stream().limit(NAMED)
                .map(each -> each.getKey() + (each.getValue() == 1 ? "" : " (" + each.getValue() + ")")).toList();
        return String.join(", ", names)
                + (counts.size() > NAMED ? " and " + (counts.size() - NAMED) + " more machines" : "");
    }
}
