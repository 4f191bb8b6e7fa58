package slotledger.intake;

import java.util.List;
import java.util.Objects;
import slotledger.model.finding.Finding;
import slotledger.model.observed.TableUse;

/**
 * What was read, how its columns were understood, and what is doubtful.
 *
 * @param <T>      what was read
 * @param value    the value
 * @param columns  for each table found, how each column was understood
 * @param findings in file order
 */
public record Reading<T>(T value, List<TableUse> columns, List<Finding> findings) {

    public Reading {
        Objects.requireNonNull(value, "value");
        columns = List.copyOf(columns);
        findings = List.copyOf(findings);
    }
}
