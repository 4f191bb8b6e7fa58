package slotledger.intake.internal.value;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import slotledger.model.family.Families;
import slotledger.model.module.Generation;
import slotledger.model.unit.Rate;

/** The nominal rates of each generation in MT/s, from the table of families, and the numbers people write for them. */
final class Grades {

    private static final Map<Generation, List<Integer>> BY_GENERATION = new EnumMap<>(Generation.class);

    static {
        for (Generation generation : Generation.values()) {
            BY_GENERATION.put(generation, Families.grades(generation).stream()
                    .map(grade -> grade.rate().megatransfers()).toList());
        }
    }

    private Grades() {
    }

    static List<Integer> of(Generation generation) {
        return BY_GENERATION.get(generation);
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
