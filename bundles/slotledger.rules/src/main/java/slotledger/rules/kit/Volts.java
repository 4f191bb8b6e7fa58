package slotledger.rules.kit;

import java.util.Optional;
import java.util.Set;
import slotledger.model.unit.Voltage;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/** The voltage the modules in the sockets run at together. */
public final class Volts {

    private Volts() {
    }

    /** The lowest voltage the slots supply and every module surely works at; empty where there is none or unknown. */
    public static Optional<Voltage> running(Situation situation) {
        Voltage lowest = null;
        for (Placed module : situation.described()) {
            Set<Voltage> supplied = module.way().voltages();
            Set<Voltage> candidates = supplied.isEmpty() ? ModuleFacts.voltages(module.kind()) : supplied;
            if (ModuleFacts.mayWorkAtMore(module.kind()) && supplied.size() != 1) {
                return Optional.empty();
            }
            for (Voltage each : candidates) {
                if (suitsAll(each, situation) && (lowest == null || each.compareTo(lowest) < 0)) {
                    lowest = each;
                }
            }
        }
        return Optional.ofNullable(lowest);
    }

    /** Whether all modules surely work at the voltage, and their slots supply it where the document says. */
    public static boolean suitsAll(Voltage voltage, Situation situation) {
        Set<Voltage> one = Set.of(voltage);
        for (Placed module : situation.described()) {
            Set<Voltage> supplied = module.way().voltages();
            if (!supplied.isEmpty() && !ModuleFacts.anySame(supplied, one)
                    || !ModuleFacts.anySame(ModuleFacts.voltages(module.kind()), one)) {
                return false;
            }
        }
        return true;
    }
}
