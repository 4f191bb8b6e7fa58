package slotledger.intake.internal.value;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import slotledger.model.module.Generation;
import slotledger.model.unit.Rate;

/**
 * The nominal rates of each generation in MT/s. Grades and the bandwidth names made of them: JESD79 and its successors
 * (from memory), as printed on modules; LPDDR from memory.
 */
final class Grades {

    private static final Map<Generation, List<Integer>> BY_GENERATION = new EnumMap<>(Generation.class);

    static {
        BY_GENERATION.put(Generation.SDR, List.of(66, 100, 133));
        BY_GENERATION.put(Generation.RDRAM, List.of(600, 700, 800, 1066, 1200));
        BY_GENERATION.put(Generation.DDR, List.of(200, 266, 333, 400));
        BY_GENERATION.put(Generation.DDR2, List.of(400, 533, 667, 800, 1066));
        BY_GENERATION.put(Generation.DDR3, List.of(800, 1066, 1333, 1600, 1866, 2133));
        BY_GENERATION.put(Generation.DDR4, List.of(1600, 1866, 2133, 2400, 2666, 2933, 3200));
        BY_GENERATION.put(Generation.DDR5, List.of(3200, 3600, 4000, 4400, 4800, 5200, 5600, 6000, 6400, 6800, 7200,
                7600, 8000, 8400, 8800));
        BY_GENERATION.put(Generation.LPDDR3, List.of(1333, 1600, 1866, 2133));
        BY_GENERATION.put(Generation.LPDDR4, List.of(1600, 2133, 2400, 2666, 3200, 3733, 4266));
        BY_GENERATION.put(Generation.LPDDR4X, List.of(3200, 3733, 4266));
        BY_GENERATION.put(Generation.LPDDR5, List.of(4800, 5500, 6000, 6400));
        BY_GENERATION.put(Generation.LPDDR5X, List.of(6400, 7467, 7500, 8533, 9600));
    }

    private Grades() {
    }

    static List<Integer> of(Generation generation) {
        return BY_GENERATION.getOrDefault(generation, List.of());
    }

    private static Iterable<Integer> candidates(Optional<Generation> generation) {
        if (generation.isPresent()) {
            return of(generation.get());
        }
        TreeSet<Integer> all = new TreeSet<>();
        BY_GENERATION.values().forEach(all::addAll);
        return all;
    }

    /** The grade a number stands for; firmware and people round 1333.33 to 1333 or 1334, and 666.67 to 666 or 667. */
    static OptionalInt near(Optional<Generation> generation, int number) {
        for (int grade : candidates(generation)) {
            if (Math.abs(grade - number) <= Math.max(1, grade / 1000)) {
                return OptionalInt.of(grade);
            }
        }
        return OptionalInt.empty();
    }

    /**
     * The grade a bandwidth name stands for: MT/s times 8 bytes, rounded by the trade in several ways (PC2-5300 and
     * PC2-5400, PC3-10600 and PC3-10666, PC-2100 for 2133), so that 2 % are allowed.
     */
    static OptionalInt ofBandwidth(Optional<Generation> generation, int megabytesPerSecond) {
        for (int grade : candidates(generation)) {
            double exact = Rate.of(grade).kilotransfers() * 8 / 1000.0;
            if (Math.abs(exact - megabytesPerSecond) <= exact * 0.02) {
                return OptionalInt.of(grade);
            }
        }
        return OptionalInt.empty();
    }

    /** Whether the number is the clock of a grade, which is half its rate. */
    static OptionalInt ofClock(Optional<Generation> generation, int number) {
        return near(generation, number * 2).isPresent() ? near(generation, number * 2)
                : near(generation, number * 2 + 1);
    }
}
