package slotledger.export.internal.text;

import java.util.Comparator;
import java.util.List;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.unit.Money;

/** Which machines and findings go into which list. */
public final class Lists {

    public static final String NO_FINDING = "Its board is not known.";
    public static final String NO_REMEDY =
            "Read maker and model on the machine's label and add its board to the catalog.";

    private static final Comparator<MachinePlan> BY_PLACE =
            Comparator.comparing((MachinePlan plan) -> plan.machine().where())
                    .thenComparing(plan -> plan.machine().tag());

    public static final String WORTH =
            "Worth: what as many new ones cost at the cheapest current offer. An estimate, not what a buyer would pay.";
    public static final String NO_WORTH = "unknown: no offer";

    private Lists() {
    }

    /** Machines that are below their target after the work, by site and room. */
    public static List<MachinePlan> notOnTarget(Plan plan) {
        return plan.machines().stream()
                .filter(machine -> machine.outcome() == Outcome.NOT_HELPED || machine.outcome() == Outcome.IMPROVED
                        || machine.outcome() == Outcome.LEFT_ALONE && machine.obstacle().isPresent())
                .sorted(BY_PLACE)
                .toList();
    }

    /** What the findings say of a machine that has no plan, worst first. */
    public static List<Finding> about(ObservedMachine machine, List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.machine().filter(machine.tag()::equals).isPresent())
                .sorted(Comparator.comparing(Finding::severity))
                .toList();
    }

    /** Errors and warnings about a planned machine that its technician should know. */
    public static List<Finding> about(MachinePlan plan, List<Finding> findings) {
        return findings.stream()
                .filter(finding -> finding.severity() != Severity.NOTE)
                .filter(finding -> finding.machine().filter(plan.machine().tag()::equals).isPresent())
                .toList();
    }

    /** What is the matter, with what was seen. */
    public static String matter(Finding finding) {
        return finding.message() + (finding.seen().isEmpty() ? "" : " Seen: \"" + finding.seen() + "\".");
    }

    /** What all leftovers are worth whose worth is known. */
    public static Money worth(Plan plan) {
        return plan.leftovers().stream().flatMap(leftover -> leftover.worth().stream())
                .reduce(Money.zero(plan.policy().currency()), Money::plus);
    }
}
