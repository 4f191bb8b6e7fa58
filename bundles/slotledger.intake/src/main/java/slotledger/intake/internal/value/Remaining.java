package slotledger.intake.internal.value;

import java.util.function.Consumer;
import java.util.function.Predicate;
import java.util.regex.MatchResult;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** A text of which patterns take what they understand; what nobody takes stays. */
final class Remaining {

    private String text;
    private final StringBuilder taken = new StringBuilder();

    Remaining(String text) {
        this.text = text;
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
        boolean found = false;
        while (matcher.find()) {
            if (use.test(matcher.toMatchResult())) {
                found = true;
                taken.append(taken.isEmpty() ? "" : " ").append(matcher.group().strip());
                matcher.appendReplacement(rest, " ");
            } else {
                matcher.appendReplacement(rest, Matcher.quoteReplacement(matcher.group()));
            }
        }
        text = matcher.appendTail(rest).toString();
        return found;
    }

    /** What was understood, in the order it was. */
    String taken() {
        return taken.toString();
    }

    /** What nobody took, without the marks between the words. */
    String rest() {
        return text.replaceAll("(?<![\\p{L}\\d])[^\\p{L}\\d?#]+(?![\\p{L}\\d])", " ")
                .replaceAll("^[\\s,;:/()\\[\\]\\-+.]+|[\\s,;:/()\\[\\]\\-+.]+$", "").replaceAll("\\s+", " ").strip();
    }
}
