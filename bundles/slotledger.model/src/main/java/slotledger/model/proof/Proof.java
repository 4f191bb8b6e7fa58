package slotledger.model.proof;

import java.time.LocalDate;
import java.util.List;
import java.util.Objects;
import slotledger.model.finding.Finding;

/**
 * The comparison of an inventory taken after the work with the plan.
 *
 * @param planTitle name of the plan's project
 * @param date      day of the comparison
 * @param machines  every machine of the plan, in plan order
 * @param findings  what is doubtful in the inventory, and machines the plan does not know
 */
public record Proof(String planTitle, LocalDate date, List<MachineProof> machines, List<Finding> findings) {

    public Proof {
        Objects.requireNonNull(planTitle, "planTitle");
        Objects.requireNonNull(date, "date");
        machines = List.copyOf(machines);
        findings = List.copyOf(findings);
    }

    public long count(ProofOutcome outcome) {
        return machines.stream().filter(machine -> machine.outcome() == outcome).count();
    }

    /** Whether every machine that was to be opened ended as planned, slot by slot. */
    public boolean isComplete() {
        return machines.stream()
                .filter(machine -> machine.plan().isOpened())
                .allMatch(machine -> machine.outcome() == ProofOutcome.DONE);
    }
}
