package slotledger.intake.internal.value;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.module.Generation;
import slotledger.model.unit.Rate;

/**
 * A rate as written, before the generation it belongs to is known.
 *
 * @param number    the number
 * @param megahertz whether it is written in MHz; people write MHz for MT/s, but some mean the clock
 */
record RawRate(int number, boolean megahertz) {

    /**
     * Generations whose lowest grade is also half of a grade that was sold far more often (from memory). Written
     * in MHz such a number can be either.
     */
    private static boolean mayBeClock(Generation generation, int grade) {
        return switch (generation) {
            case DDR -> grade == 200;
            case DDR2 -> grade == 400;
            case DDR3 -> grade == 800;
            case DDR4 -> grade == 1600;
            case DDR5 -> grade == 3200;
            case FPM, EDO, SDR, RDRAM, LPDDR3, LPDDR4, LPDDR4X, LPDDR5, LPDDR5X -> false;
        };
    }

    /** The rate; empty, with a doubt, where the number can't be one or may be a clock. */
    Optional<Rate> resolve(Optional<Generation> generation, List<Doubt> doubts) {
        OptionalInt grade = Grades.near(generation, number);
        if (grade.isPresent()) {
            if (megahertz && generation.isPresent() && mayBeClock(generation.get(), grade.getAsInt())) {
                doubts.add(clock(generation.get(), grade.getAsInt() * 2, "may be"));
                return Optional.empty();
            }
            return Optional.of(Rate.of(grade.getAsInt()));
        }
        OptionalInt doubled = Grades.ofClock(generation, number);
        if (generation.isPresent() && doubled.isPresent()) {
            doubts.add(clock(generation.get(), doubled.getAsInt(), "is"));
            return Optional.empty();
        }
        if (generation.isPresent() && isSold(generation.get())) {
            doubts.add(Doubt.note("uncommon-rate", "%d MT/s is no standard grade of %s; it was kept as written."
                    .formatted(number, generation.get().text()), "one of " + Grades.of(generation.get()),
                    "Check the label of the module; its guaranteed rate may be lower."));
            return Optional.of(Rate.of(number));
        }
        doubts.add(Doubt.warning("unknown-rate", "%d is not a rate memory%s is made for; the rate is left unknown."
                .formatted(number, generation.map(known -> " of type " + known.text()).orElse("")),
                "a rate in MT/s, such as 1333, 1600 or 2666", "Look at the label of the module."));
        return Optional.empty();
    }

    private boolean isSold(Generation generation) {
        List<Integer> grades = Grades.of(generation);
        return !grades.isEmpty() && number > grades.get(0) && number <= grades.get(grades.size() - 1) * 3 / 2
                && (number % 100 == 0 || number * 3 % 100 <= 2 || number * 3 % 100 >= 98);
    }

    private Doubt clock(Generation generation, int rate, String certainty) {
        return Doubt.warning("clock-for-rate",
                "%d MHz %s the clock of %s-%d, not a rate; the rate is left unknown."
                        .formatted(number, certainty, generation.text(), rate),
                "the rate in MT/s, such as %s-%d".formatted(generation.text(), rate),
                "Write %s-%d if that is what the label says, otherwise the rate on the label."
                        .formatted(generation.text(), rate));
    }
}
