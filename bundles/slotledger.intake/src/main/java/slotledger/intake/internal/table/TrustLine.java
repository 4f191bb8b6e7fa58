package slotledger.intake.internal.table;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.observed.Subject;
import slotledger.model.observed.Trust;
import slotledger.model.source.Ground;

/** Reads a line of a mapping file that says who is believed: {@code trust memory = spreadsheet, firmware}. */
final class TrustLine {

    private static final Pattern LINE = Pattern.compile("\\s*trust\\s+(\\S+)\\s*=\\s*(.*?)\\s*");
    private static final Map<String, Ground> SOURCES =
            Map.of("firmware", Ground.FIRMWARE, "spreadsheet", Ground.SPREADSHEET);

    private TrustLine() {
    }

    static boolean isOne(String line) {
        return LINE.matcher(line).matches();
    }

    static Trust read(String line, Trust before, Consumer<Doubt> doubts) {
        Matcher matcher = LINE.matcher(line);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("The line (%s) must say whom to trust.".formatted(line));
        }
        Optional<Subject> subject = Subject.of(matcher.group(1));
        List<Ground> order = new ArrayList<>();
        for (String word : matcher.group(2).split("\\s*,\\s*")) {
            Ground source = SOURCES.get(word);
            if (source == null || order.contains(source) || subject.isEmpty()) {
                doubts.accept(Doubt.error("mapping-trust", "This line doesn't say whom to trust.",
                        "trust serial, maker, model, processor or memory = firmware and spreadsheet, the most trusted"
                                + " first", "Write it like this: trust memory = firmware, spreadsheet"));
                return before;
            }
            order.add(source);
        }
        return before.with(subject.get(), order);
    }
}
