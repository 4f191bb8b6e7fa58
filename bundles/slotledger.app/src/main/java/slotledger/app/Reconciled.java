package slotledger.app;

import java.util.List;
import java.util.Objects;
import slotledger.model.finding.Finding;
import slotledger.model.observed.Reconciliation;

/**
 * Sources compared.
 *
 * @param reconciliation fact by fact
 * @param findings       of the reading, those of differences among them
 */
public record Reconciled(Reconciliation reconciliation, List<Finding> findings) {

    public Reconciled {
        Objects.requireNonNull(reconciliation, "reconciliation");
        findings = List.copyOf(findings);
    }
}
