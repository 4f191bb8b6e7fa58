package slotledger.model.proof;

import java.util.ArrayList;
import java.util.List;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.machine.AssetTag;
import slotledger.model.work.Job;
import slotledger.model.work.JobState;

/** What somebody still has to see to before a plan can be forgotten. */
public final class OpenPoints {

    private static final int NAMED = 12;

    private OpenPoints() {
    }

    /** One sentence each; none where all is done. */
    public static List<String> of(CloseOut close) {
        List<String> points = new ArrayList<>();
        if (close.closing().isEmpty()) {
            points.add("No inventory was taken after the work yet, so nothing is proved.");
        }
        close.closing().ifPresent(closing -> {
            names(points, "Not seen by the inventory: ", closing.proof().machines().stream()
                    .filter(machine -> machine.outcome() == ProofOutcome.NOT_SEEN)
                    .map(machine -> machine.plan().machine().tag()).toList());
            names(points, "Other than planned, see the deviations: ", closing.deviations().stream()
                    .map(Deviation::machine).distinct().toList());
        });
        names(points, "Jobs that nobody has ended: ", close.jobs().stream().filter(job -> !job.state().isEnded())
                .map(Job::machine).toList());
        close.jobs().stream().filter(job -> job.state() == JobState.FAILED || job.state() == JobState.PUT_BACK)
                .forEach(job -> points.add("Machine " + job.machine() + " is " + job.state().text() + ": "
                        + job.reason()));
        if (close.order().approval().isEmpty() && !close.order().lines().isEmpty()) {
            points.add("Nobody approved the order of this plan.");
        }
        for (OrderStatus.Line line : close.order().lines()) {
            String id = line.purchase().offer().id();
            if (line.missing() > 0) {
                points.add(id + ": " + line.missing() + " of " + line.purchase().modules() + " modules are missing"
                        + (line.wrong() + line.dead() == 0 ? "." : "; " + line.wrong() + " wrong and " + line.dead()
                                + " dead ones are to be sent back."));
            }
            if (line.untested() > 0) {
                points.add(id + ": nobody noted a test of " + line.untested() + " modules.");
            }
        }
        return List.copyOf(points);
    }

    private static void names(List<String> points, String what, List<AssetTag> tags) {
        if (!tags.isEmpty()) {
            String names = String.join(", ", tags.stream().limit(NAMED).map(AssetTag::value).toList());
            points.add(what + tags.size() + " (" + names
                    + (tags.size() > NAMED ? " and " + (tags.size() - NAMED) + " more" : "") + ").");
        }
    }
}
