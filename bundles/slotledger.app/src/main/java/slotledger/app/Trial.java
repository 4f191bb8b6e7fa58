package slotledger.app;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.Population;
import slotledger.model.verdict.Verdict;

/**
 * A module kind tried in a machine.
 *
 * @param slots      labels of the sockets the module was put into
 * @param population what the machine would hold
 * @param verdict    what the rules say of it
 */
public record Trial(List<String> slots, Population population, Verdict verdict) {

    public Trial {
        slots = List.copyOf(slots);
        Objects.requireNonNull(population, "population");
        Objects.requireNonNull(verdict, "verdict");
    }
}
