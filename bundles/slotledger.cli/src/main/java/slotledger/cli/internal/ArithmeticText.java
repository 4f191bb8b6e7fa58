package slotledger.cli.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import slotledger.model.unit.Bandwidth;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Arithmetic.CapacityStep;
import slotledger.model.verdict.Arithmetic.Part;
import slotledger.model.verdict.Arithmetic.RateBound;

/** The arithmetic of an operation, line by line. */
final class ArithmeticText {

    private ArithmeticText() {
    }

    /**
     * Channels, rate and capacities; each line begins with its result.
     *
     * @param rate what the machine runs at, where it is known
     */
    static void lines(Answer.Builder answer, Arithmetic arithmetic, Optional<Rate> rate) {
        List<String[]> rows = new ArrayList<>();
        boolean several = arithmetic.parts().stream().anyMatch(part -> part.processor() > 1);
        for (Part part : arithmetic.parts()) {
            rows.add(new String[] {word(rows, "Channels"),
                    part.capacity() + (part.peak().equals(Bandwidth.NONE) ? "" : " at " + part.peak()),
                    (several ? "processor " + part.processor() + ": " : "") + part.sentence()});
        }
        boolean found = false;
        for (RateBound bound : arithmetic.rates()) {
            boolean sets = !found && bound.sure() && rate.equals(Optional.of(bound.rate()));
            found |= sets;
            rows.add(new String[] {word(rows, "Rate"), bound.rate() + (bound.sure() ? "" : " ?"),
                    bound.by().text() + (sets ? ", sets it: " : ": ") + bound.sentence()});
        }
        for (CapacityStep step : arithmetic.capacities()) {
            rows.add(new String[] {word(rows, "Memory"), step.leaves().toString(),
                    step.name() + ": " + step.sentence()});
        }
        int width = rows.stream().mapToInt(row -> row[1].length()).max().orElse(0) + 2;
        rows.forEach(row -> answer.items(row[0], Wrapped.behind(("%-" + width + "s").formatted(row[1]), row[2],
                Wrapped.WIDTH - Console.INDENT)));
    }

    /** A word stands only in the first of its rows. */
    private static String word(List<String[]> rows, String word) {
        return rows.stream().anyMatch(row -> row[0].equals(word)) ? "" : word;
    }

    static Map<String, Object> facts(Arithmetic arithmetic) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("parts", arithmetic.parts().stream().map(ArithmeticText::facts).toList());
        facts.put("rates", arithmetic.rates().stream().map(ArithmeticText::facts).toList());
        facts.put("capacities", arithmetic.capacities().stream().map(ArithmeticText::facts).toList());
        return facts;
    }

    private static Map<String, Object> facts(Part part) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("processor", part.processor());
        facts.put("channels", part.channels());
        facts.put("capacity", part.capacity().toString());
        facts.put("peakKilobytesPerSecond", part.peak().kilobytesPerSecond());
        facts.put("sentence", part.sentence());
        return facts;
    }

    private static Map<String, Object> facts(RateBound bound) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("by", bound.by().name().toLowerCase(Locale.ROOT).replace('_', '-'));
        facts.put("rate", bound.rate().megatransfers());
        facts.put("sure", bound.sure());
        facts.put("sentence", bound.sentence());
        return facts;
    }

    private static Map<String, Object> facts(CapacityStep step) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("name", step.name());
        facts.put("leaves", step.leaves().toString());
        facts.put("sentence", step.sentence());
        return facts;
    }
}
