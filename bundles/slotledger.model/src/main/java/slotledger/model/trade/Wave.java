package slotledger.model.trade;

import java.time.LocalDate;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.unit.Money;

/**
 * One of several times at which a fleet is worked on, each with money of its own.
 *
 * @param name              such as "this year"
 * @param date              day for which offers are looked at
 * @param budget            most for goods and delivery of this wave; empty means no limit
 * @param costCentreBudgets most for each cost centre in this wave, in file order
 * @param neededBy          last day on which its modules may arrive; empty means any
 */
public record Wave(
        String name,
        LocalDate date,
        Optional<Money> budget,
        Map<String, Money> costCentreBudgets,
        Optional<LocalDate> neededBy) {

    public Wave {
        Objects.requireNonNull(date, "date");
        Objects.requireNonNull(budget, "budget");
        costCentreBudgets = Collections.unmodifiableMap(new LinkedHashMap<>(costCentreBudgets));
        Objects.requireNonNull(neededBy, "neededBy");
        if (name.isBlank()) {
            throw new IllegalArgumentException("The name of a wave must not be blank.");
        }
    }
}
