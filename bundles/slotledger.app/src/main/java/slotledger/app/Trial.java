package slotledger.app;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.Population;
import slotledger.model.verdict.Verdict;

/**
 * A module kind tried in a machine.
 *
 * @param slots      labels of the sockets it was asked for
 * @param filled     labels of the sockets that hold it: these, or more where a socket alone is not allowed
 * @param othersStay whether what is in the other sockets now stays there
 * @param population what the machine would hold
 * @param verdict    what the rules say of it
 */
public record Trial(
        List<String> slots, List<String> filled, boolean othersStay, Population population, Verdict verdict) {

    public Trial {
        slots = List.copyOf(slots);
        filled = List.copyOf(filled);
        Objects.requireNonNull(population, "population");
        Objects.requireNonNull(verdict, "verdict");
    }
}
