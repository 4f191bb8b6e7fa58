package slotledger.model.observed;

/**
 * A part of a label and what it was taken for.
 *
 * @param from    where it begins in the text, the first character is 1
 * @param text    as printed
 * @param meaning in words; empty where it says nothing about fitting or running
 */
public record LabelPart(int from, String text, String meaning) {

    public LabelPart {
        if (from < 1 || text.isBlank()) {
            throw new IllegalArgumentException("The part of a label (%s, at %d) must have a text and a place."
                    .formatted(text, from));
        }
    }
}
