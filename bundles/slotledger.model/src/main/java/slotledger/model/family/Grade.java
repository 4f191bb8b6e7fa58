package slotledger.model.family;

import java.util.Objects;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Rate;

/**
 * A rate modules of a family are made for.
 *
 * @param rate          as the trade says it
 * @param name          as labels print it: "PC4-21300"
 * @param kilotransfers the true rate in thousands of transfers a second; differs where the name is nominal
 */
public record Grade(Rate rate, String name, long kilotransfers) {

    public Grade {
        Objects.requireNonNull(rate, "rate");
        if (name.isBlank() || kilotransfers < 1) {
            throw new IllegalArgumentException("The grade %s must have a name and a true rate.".formatted(rate));
        }
    }

    /** The most that so many data bits can carry. */
    public Bandwidth peak(int dataBits) {
        return new Bandwidth(Math.multiplyExact(kilotransfers, (long) dataBits) / 8);
    }
}
