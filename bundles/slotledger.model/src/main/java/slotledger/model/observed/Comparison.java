package slotledger.model.observed;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.AssetTag;

/**
 * One fact of a machine as several sources tell it.
 *
 * @param machine the machine
 * @param subject what the fact belongs to
 * @param fact    for people: "serial", "slot DIMM1"
 * @param said    by each source, the one that is believed first; at least one
 * @param outcome whether they agree
 */
public record Comparison(AssetTag machine, Subject subject, String fact, List<Testimony> said, Outcome outcome) {

    /** How sources stand to each other. */
    public enum Outcome {
        AGREE("agree"),
        /** One of them says more, nothing of it against the others. */
        COMPLETED("one says more"),
        ONLY_ONE("only one says it"),
        DIFFER("differ");

        private final String text;

        Outcome(String text) {
            this.text = text;
        }

        public String text() {
            return text;
        }
    }

    public Comparison {
        Objects.requireNonNull(machine, "machine");
        Objects.requireNonNull(subject, "subject");
        Objects.requireNonNull(fact, "fact");
        said = List.copyOf(said);
        Objects.requireNonNull(outcome, "outcome");
        if (said.isEmpty()) {
            throw new IllegalArgumentException(
                    "The comparison of %s of %s must have a source.".formatted(fact, machine));
        }
    }

    /** What is believed. */
    public Testimony believed() {
        return said.get(0);
    }
}
