package slotledger.rules.internal.operation;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Supplier;
import slotledger.model.board.Interleave;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Arithmetic.BoundBy;
import slotledger.model.verdict.Arithmetic.Part;
import slotledger.model.verdict.Arithmetic.RateBound;
import slotledger.rules.internal.capacity.Counting;
import slotledger.rules.internal.operation.Split.Step;
import slotledger.rules.spi.Placed;
import slotledger.rules.spi.Situation;

/** The arithmetic of an operation, for people. */
public final class WorkedOut {

    private WorkedOut() {
    }

    public static Arithmetic of(Situation situation) {
        Bandwidth channel = RunningRate.of(situation).rate()
                .map(rate -> rate.peak(Running.channelBits(situation)))
                .orElse(Bandwidth.NONE);
        List<Part> parts = new ArrayList<>();
        for (int processor = 1; processor <= situation.setup().processors(); processor++) {
            Split split = Split.of(situation, processor);
            Capacity below = Capacity.NONE;
            for (Step step : split.steps()) {
                Capacity capacity = Capacity.ofKiB(step.kibibytes());
                Capacity each = Capacity.ofKiB(step.kibibytes() / step.channels());
                parts.add(new Part(processor, step.channels(), capacity, channel.times(step.channels()),
                        split.isJoined() ? together(split, step, each, below) : alone(situation, split)));
                below = below.plus(each);
            }
        }
        return new Arithmetic(parts, rates(situation), Counting.steps(situation));
    }

    private static String together(Split split, Step step, Capacity each, Capacity below) {
        if (step.channels() == 1) {
            return below.isNone()
                    ? "1 channel holds memory (%s): %s.".formatted(split.text(), each)
                    : "1 channel holds %s more than the %s counted before: %s.".formatted(each, below, each);
        }
        Capacity sum = each.times(step.channels());
        return below.isNone()
                ? "%d channels hold at least %s each (%s): %1$d x %2$s = %s.".formatted(
                        step.channels(), each, split.text(), sum)
                : "%d channels hold %s more than the %s counted before: %1$d x %2$s = %s.".formatted(
                        step.channels(), each, below, sum);
    }

    private static String alone(Situation situation, Split split) {
        return "The channels hold %s; %s.".formatted(split.text(), switch (situation.board().interleave()) {
            case NONE -> "on this board they run one at a time";
            case EQUAL_ONLY -> Interleave.EQUAL_ONLY.text() + ", so they run one at a time";
            case FLEXIBLE, UNKNOWN -> "no document says that unequal ones run together, so they are counted one at a "
                    + "time";
        });
    }

    private static List<RateBound> rates(Situation situation) {
        Listed listed = new Listed();
        Map<Rate, List<String>> rated = new TreeMap<>();
        for (Placed module : situation.modules()) {
            module.kind().rate().ifPresent(rate ->
                    rated.computeIfAbsent(rate, each -> new ArrayList<>()).add(module.label()));
        }
        rated.forEach((rate, labels) -> listed.bounds.add(new RateBound(BoundBy.MODULE, rate, true,
                (labels.size() == 1 ? "The module in slot %s is rated %s." : "The modules in slots %s are rated %s.")
                        .formatted(String.join(", ", labels), rate))));
        RateBounds.others(situation, listed);
        listed.bounds.sort(Comparator.comparing(RateBound::rate).thenComparing(bound -> !bound.sure()));
        return listed.bounds;
    }

    /** Every bound; one that holds in several channels once, with the first of them. */
    private static final class Listed implements Bounds {

        private final List<RateBound> bounds = new ArrayList<>();
        private final Set<String> seen = new HashSet<>();

        @Override
        public void sure(Rate rate, Supplier<Why> why) {
            add(rate, true, why.get().by(), why.get().text());
        }

        @Override
        public void maybe(Rate rate, Supplier<Why> why) {
            add(rate, false, why.get().by(), "It may hold, depending on " + why.get().text() + ".");
        }

        @Override
        public void unrated(Placed module) {
            throw new IllegalStateException("Modules are listed by themselves.");
        }

        private void add(Rate rate, boolean sure, BoundBy by, String sentence) {
            if (seen.add(by + " " + rate + " " + sentence.replaceFirst(" in channel .*", ""))) {
                bounds.add(new RateBound(by, rate, sure, sentence));
            }
        }
    }
}
