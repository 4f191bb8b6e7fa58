package slotledger.catalog;

import java.util.List;
import java.util.Objects;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Fleet;
import slotledger.model.observed.ObservedMachine;

/**
 * An observed fleet after its boards were looked up.
 *
 * @param fleet      machines whose board is known and whose modules are in slots
 * @param unresolved machines that can't be planned: board unknown, or more modules than slots, ...
 * @param findings   one for each unresolved machine at least, and every assumption made
 */
public record ResolvedFleet(Fleet fleet, List<ObservedMachine> unresolved, List<Finding> findings) {

    public ResolvedFleet {
        Objects.requireNonNull(fleet, "fleet");
        unresolved = List.copyOf(unresolved);
        findings = List.copyOf(findings);
    }
}
