package slotledger.catalog;

import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeMap;
import slotledger.model.module.Generation;
import slotledger.model.source.Source;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.unit.Voltage;

/**
 * What the memory controller of a family of processors can do. A board may do less: fewer slots, fewer channels wired;
 * it can't do more.
 *
 * @param name              of the family
 * @param generations       memory technologies
 * @param channels          of one processor
 * @param modulesPerChannel most modules in a channel
 * @param largestTotal      most memory of one processor
 * @param rates             highest rate by the number of modules in a channel; those in between run as the next larger
 *                          number does
 * @param ecc               what it does with check bits
 * @param voltages          of modules it drives; empty where not told
 * @param source            who says so
 */
public record Platform(String name, Set<Generation> generations, int channels, int modulesPerChannel,
        Capacity largestTotal, Map<Integer, Rate> rates, Ecc ecc, Set<Voltage> voltages, Source source) {

    /** What a controller does with check bits. */
    public enum Ecc {
        /** Checks and corrects where the board wires them. */
        CHECKS("checks"),
        NONE("none"),
        /** Some processors of the family do. */
        SOME("some processors"),
        /** Works with such modules only. */
        REQUIRED("required");

        private final String text;

        Ecc(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    public Platform {
        Objects.requireNonNull(name, "name");
        generations = Set.copyOf(generations);
        Objects.requireNonNull(largestTotal, "largestTotal");
        rates = Map.copyOf(new TreeMap<>(rates));
        Objects.requireNonNull(ecc, "ecc");
        voltages = Set.copyOf(voltages);
        Objects.requireNonNull(source, "source");
        if (generations.isEmpty() || channels < 1 || modulesPerChannel < 1 || rates.isEmpty()) {
            throw new IllegalArgumentException("The platform %s must have memory, channels and rates.".formatted(name));
        }
    }
}
