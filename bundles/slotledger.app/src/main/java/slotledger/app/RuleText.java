package slotledger.app;

import java.util.Objects;
import slotledger.model.source.Source;

/**
 * The page of an active rule.
 *
 * @param id        stable id of the rule
 * @param sentence  the rule in one sentence
 * @param source    who says so
 * @param howToTell how to find out
 * @param whatToDo  what to do where the rule is broken
 * @param example   one worked example with numbers
 */
public record RuleText(
        String id, String sentence, Source source, String howToTell, String whatToDo, String example) {

    public RuleText {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(sentence, "sentence");
        Objects.requireNonNull(source, "source");
        Objects.requireNonNull(howToTell, "howToTell");
        Objects.requireNonNull(whatToDo, "whatToDo");
        Objects.requireNonNull(example, "example");
    }
}
