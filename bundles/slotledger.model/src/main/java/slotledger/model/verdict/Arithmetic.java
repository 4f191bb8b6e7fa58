package slotledger.model.verdict;

import java.util.List;
import java.util.Objects;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;

/**
 * How an operation comes about, number by number; for people, so it is only worked out when asked.
 *
 * @param parts      memory by the channels it runs over, most channels first
 * @param rates      what bounds the rate, lowest first; the first one sets it
 * @param capacities from installed to usable, each step with what it leaves
 */
public record Arithmetic(List<Part> parts, List<RateBound> rates, List<CapacityStep> capacities) {

    public Arithmetic {
        parts = List.copyOf(parts);
        rates = List.copyOf(rates);
        capacities = List.copyOf(capacities);
    }

    /**
     * Memory that runs in one mode.
     *
     * @param processor which processor's channels, 1 for the first
     * @param channels  how many channels it runs over
     * @param capacity  how much
     * @param peak      peak bandwidth while it is read; none where the rate is unknown
     * @param sentence  how it is computed, with the numbers
     */
    public record Part(int processor, int channels, Capacity capacity, Bandwidth peak, String sentence) {
        public Part {
            Objects.requireNonNull(capacity, "capacity");
            Objects.requireNonNull(peak, "peak");
            Objects.requireNonNull(sentence, "sentence");
        }
    }

    /** What a bound of the rate comes from. */
    public enum BoundBy {
        MODULE("module"),
        PROCESSOR("processor"),
        BOARD("board"),
        MODULES_PER_CHANNEL("modules in a channel"),
        RANKS("ranks"),
        VOLTAGE("voltage"),
        FILL_TABLE("fill table");

        private final String text;

        BoundBy(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    /**
     * One bound of the rate.
     *
     * @param by       what it comes from
     * @param rate     the highest rate it allows
     * @param sure     whether it surely holds; else it hangs on a missing fact
     * @param sentence why, with the numbers
     */
    public record RateBound(BoundBy by, Rate rate, boolean sure, String sentence) {
        public RateBound {
            Objects.requireNonNull(by, "by");
            Objects.requireNonNull(rate, "rate");
            Objects.requireNonNull(sentence, "sentence");
        }
    }

    /**
     * One step from installed to usable memory.
     *
     * @param name     "installed", "processor addresses", "mirrored", "operating system uses"
     * @param leaves   what is left after it
     * @param sentence why, with the numbers
     */
    public record CapacityStep(String name, Capacity leaves, String sentence) {
        public CapacityStep {
            Objects.requireNonNull(name, "name");
            Objects.requireNonNull(leaves, "leaves");
            Objects.requireNonNull(sentence, "sentence");
        }
    }
}
