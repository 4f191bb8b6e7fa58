package slotledger.intake.internal.value;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import slotledger.model.observed.LabelPart;

/** A text of which patterns take what they understand; what nobody takes stays. */
final class Remaining {

    private final Facts facts;
    private String text;
    /** Where each character of the text stood at first, from 1. */
    private int[] places;
    private final StringBuilder taken = new StringBuilder();
    private final List<LabelPart> parts = new ArrayList<>();

    Remaining(String text, Facts facts) {
        this.text = text;
        this.facts = facts;
        places = new int[text.length()];
        Arrays.setAll(places, index -> index + 1);
    }

    /** Takes every match. */
    boolean take(Pattern pattern, Consumer<MatchResult> use) {
        return takeIf(pattern, match -> {
            use.accept(match);
            return true;
        });
    }

    /** Takes every match that can be used. */
    boolean takeIf(Pattern pattern, Predicate<MatchResult> use) {
        Matcher matcher = pattern.matcher(text);
        StringBuilder rest = new StringBuilder();
        int[] kept = new int[text.length()];
        int done = 0;
        boolean found = false;
        while (matcher.find()) {
            int told = facts.told().size();
            if (matcher.group().isBlank() || !use.test(matcher.toMatchResult())) {
                continue;
            }
            found = true;
            taken.append(taken.isEmpty() ? "" : " ").append(matcher.group().strip());
            int blanks = matcher.group().length() - matcher.group().stripLeading().length();
            parts.add(new LabelPart(places[matcher.start() + blanks], matcher.group().strip(),
                    String.join(", ", facts.told().subList(told, facts.told().size()))));
            System.arraycopy(places, done, kept, rest.length(), matcher.start() - done);
            rest.append(text, done, matcher.start());
            kept[rest.length()] = places[matcher.start()];
            rest.append(' ');
            done = matcher.end();
        }
        System.arraycopy(places, done, kept, rest.length(), text.length() - done);
        text = rest.append(text, done, text.length()).toString();
        places = kept;
        return found;
    }

    /** Whether a pattern occurs in what is left. */
    boolean has(Pattern pattern) {
        return pattern.matcher(text).find();
    }

    /** Where a character of the remaining text stood at first. */
    int place(int index) {
        return places[index];
    }

    /** What was understood, in the order it was. */
    String taken() {
        return taken.toString();
    }

    /** What was understood, from left to right. */
    List<LabelPart> parts() {
        return parts.stream().sorted(Comparator.comparingInt(LabelPart::from)).toList();
    }

    /** What nobody took, without the marks between the words. */
    String rest() {
        return text.replaceAll("(?<![\\p{L}\\d])[^\\p{L}\\d?#]+(?![\\p{L}\\d])", " ")
                .replaceAll("^[\\s,;:/()\\[\\]\\-+.]+|[\\s,;:/()\\[\\]\\-+.]+$", "").replaceAll("\\s+", " ").strip();
    }
}
