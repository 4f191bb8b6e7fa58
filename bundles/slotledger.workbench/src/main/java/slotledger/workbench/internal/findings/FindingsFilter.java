package slotledger.workbench.internal.findings;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.workbench.internal.Texts;

/** The findings that hold all words somebody typed, whatever their case and order. */
final class FindingsFilter {

    private List<FindingLine> all = List.of();
    private String words = "";

    void show(List<FindingLine> lines) {
        all = List.copyOf(lines);
    }

    void filter(String typed) {
        words = typed;
    }

    List<FindingLine> visible() {
        List<String> wanted = Arrays.stream(words.toLowerCase(Locale.ROOT).split("\\s+"))
                .filter(word -> !word.isEmpty()).toList();
        return wanted.isEmpty() ? all : all.stream().filter(line -> wanted.stream().allMatch(text(line)::contains))
                .toList();
    }

    /** How many there are of each severity; how many are shown, where that aren't all. */
    String summary() {
        if (all.isEmpty()) {
            return Texts.finding_none;
        }
        String counts = Texts.with(Texts.finding_counts, count(Severity.ERROR), count(Severity.WARNING),
                count(Severity.NOTE));
        int shown = visible().size();
        return shown == all.size() ? counts : Texts.with(Texts.summary_filtered, shown) + " · " + counts;
    }

    private long count(Severity severity) {
        return all.stream().filter(line -> line.severity() == severity).count();
    }

    private static String text(FindingLine line) {
        return Stream.of(line.severity().text(), line.machine().map(AssetTag::value).orElse(""), line.place(),
                        line.message(), line.remedy())
                .collect(Collectors.joining(" ")).toLowerCase(Locale.ROOT);
    }
}
