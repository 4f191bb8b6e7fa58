package slotledger.model.project;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.delivery.TradeState;

/** Goes through a journal from its beginning. */
final class StateBuilder {

    private final Map<Part, Integer> imports = new EnumMap<>(Part.class);
    private final Map<Part, PartVersion> parts = new EnumMap<>(Part.class);
    private final Map<String, Entry> decisions = new LinkedHashMap<>();
    private final List<PlanVersion> plans = new ArrayList<>();
    private final WorkBuilder work = new WorkBuilder();
    private final List<TradeState.Happened> trade = new ArrayList<>();
    private String title = "";
    private long last;
    private int planned;

    /** An entry that doesn't hold still counts for the numbers of versions. */
    void add(Entry entry, boolean holds) {
        last = entry.number();
        if (entry.change() instanceof Change.Created created) {
            title = created.title();
        } else if (entry.change() instanceof Change.Imported imported) {
            imported.parts().forEach((part, files) -> {
                int number = imports.merge(part, 1, Integer::sum);
                if (holds) {
                    take(new PartVersion(part, number, entry.number(), files));
                }
            });
        } else if (entry.change() instanceof Change.Planned plan) {
            planned++;
            if (holds) {
                plans.add(new PlanVersion(planned, entry.number(), plan));
            }
        } else if (entry.change() instanceof Change.Decided decided && holds) {
            String subject = decided.decision().subject();
            decisions.remove(subject);
            decisions.put(subject, entry);
        } else if (entry.change() instanceof Change.Rounds rounds && holds) {
            work.take(rounds);
        } else if (entry.change() instanceof Change.Worked worked) {
            work.take(worked, holds);
        } else if (entry.change() instanceof Change.Traded traded && holds) {
            trade.add(new TradeState.Happened(entry.number(), entry.made(), entry.author().who(), traded.event()));
        }
    }

    private void take(PartVersion version) {
        if (version.files().isEmpty()) {
            parts.remove(version.part());
        } else {
            parts.put(version.part(), version);
        }
    }

    WorkBuilder work() {
        return work;
    }

    ProjectState build() {
        return new ProjectState(title, last, parts, plans, List.copyOf(decisions.values()), work.build(),
                new TradeState(trade));
    }
}
