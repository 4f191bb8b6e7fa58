package slotledger.rules;

import java.util.Objects;
import slotledger.model.source.Source;

/**
 * What a person can read about one rule.
 *
 * @param id        stable id of the rule, lower-case words with hyphens
 * @param sentence  the rule in one sentence
 * @param source    the document the rule comes from, or what else it rests on; a single board's facts have their own
 * @param howToTell how to find out, on the machine, the module or in a document
 * @param whatToDo  what to do where the rule is broken
 * @param example   one worked example with numbers
 */
public record RulePage(
        String id, String sentence, Source source, String howToTell, String whatToDo, String example) {

    public RulePage {
        Objects.requireNonNull(source, "source");
        if (!id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException(
                    "The id of a rule (%s) must be lower-case words with hyphens.".formatted(id));
        }
        if (sentence.isBlank() || howToTell.isBlank() || whatToDo.isBlank() || example.isBlank()) {
            throw new IllegalArgumentException("The page of rule %s must have all its parts.".formatted(id));
        }
    }
}
