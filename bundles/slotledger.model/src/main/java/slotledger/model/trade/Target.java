package slotledger.model.trade;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;

/**
 * What the machines of a role must reach.
 *
 * @param role         the role as the inventory names it; matched without regard to case and outer blanks
 * @param capacity     least usable memory
 * @param sameChannels whether all memory must run over all channels that can be filled
 * @param ecc          whether errors must be checked and corrected
 * @param rate         least rate
 * @param weight       how much one machine of the role counts, 1 to 1000; more is more urgent
 */
public record Target(
        String role, Capacity capacity, boolean sameChannels, boolean ecc, Optional<Rate> rate, int weight) {

    private static final int MOST = 1000;

    public Target {
        Objects.requireNonNull(role, "role");
        Objects.requireNonNull(capacity, "capacity");
        Objects.requireNonNull(rate, "rate");
        if (weight < 1 || weight > MOST) {
            throw new IllegalArgumentException(
                    "The weight (%d) of role %s must be from 1 to 1000.".formatted(weight, role));
        }
    }

    public static Target of(String role, Capacity capacity) {
        return new Target(role, capacity, false, false, Optional.empty(), 1);
    }
}
