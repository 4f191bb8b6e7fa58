package slotledger.intake.internal.table;

import java.util.Objects;
import java.util.Optional;
import slotledger.intake.internal.value.CapacityUnit;

/**
 * One column of a table.
 *
 * @param number  1-based
 * @param heading as written; the rows of a heading joined by " / "
 * @param meaning what it was taken for; empty where it is not used
 * @param unit    the unit of capacity its heading states
 */
public record Column(int number, String heading, Optional<Meaning> meaning, Optional<CapacityUnit> unit) {

    public Column {
        Objects.requireNonNull(heading, "heading");
        Objects.requireNonNull(meaning, "meaning");
        Objects.requireNonNull(unit, "unit");
    }
}
