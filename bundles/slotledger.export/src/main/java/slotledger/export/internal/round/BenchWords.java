package slotledger.export.internal.round;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import slotledger.export.internal.text.Texts;
import slotledger.model.plan.Bench;
import slotledger.model.plan.Plan;

/** What a technician must know of the bench before a round begins. */
public final class BenchWords {

    private BenchWords() {
    }

    /** One sentence each. */
    public static List<String> of(Plan plan) {
        Bench bench = Bench.of(plan);
        List<String> lines = new ArrayList<>();
        if (bench.modules() > 0) {
            lines.add("At most %s lie ready at once for machines further on, in %s; most after machine %s."
                    .formatted(Texts.count(bench.modules(), "pulled module or filler", "pulled modules and fillers"),
                            Texts.count(bench.bags(), "bag or tray", "bags or trays"), bench.fullest().orElseThrow()));
        } else if (!plan.work().isEmpty()) {
            lines.add("No pulled module has to lie ready for another machine.");
        }
        if (bench.betweenSites() > 0) {
            lines.add("%s from one site to another in all; the lists name the site."
                    .formatted(Texts.count(bench.betweenSites(), "pulled module or filler is carried",
                            "pulled modules and fillers are carried")));
        }
        for (Bench.Wait wait : bench.waits()) {
            lines.add(wait(wait));
        }
        return lines;
    }

    /** "Open A before what it gets is there: ..." */
    private static String wait(Bench.Wait wait) {
        String set = wait.set().entrySet().stream()
                .map(kind -> kind.getValue() + " x " + kind.getKey()).collect(Collectors.joining(" and "));
        return ("Machines swap in a ring: %s is opened before %s for it is there. Leave it open until %s is done, or"
                + " borrow that set, put it in until then, and give it back.").formatted(wait.machine(), set,
                wait.until());
    }
}
