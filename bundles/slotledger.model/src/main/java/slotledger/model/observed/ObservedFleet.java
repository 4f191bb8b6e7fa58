package slotledger.model.observed;

import java.util.List;
import slotledger.model.finding.Finding;

/**
 * What one or several inventories say, and what is doubtful in them. Every row of an inventory is a machine or has a
 * finding.
 *
 * @param machines in file order; asset tags are unique
 * @param findings in file order
 */
public record ObservedFleet(List<ObservedMachine> machines, List<Finding> findings) {

    public ObservedFleet {
        machines = List.copyOf(machines);
        findings = List.copyOf(findings);
    }
}
