package slotledger.model.project;

/**
 * Who changes a project, and why.
 *
 * @param who name of a person, at most 200 characters
 * @param why a reason in that person's words, at most 4000 characters; may be empty
 */
public record Author(String who, String why) {

    private static final int LONGEST_NAME = 200;
    private static final int LONGEST_REASON = 4000;

    public Author {
        who = who.strip();
        why = why.strip();
        if (who.isEmpty() || who.length() > LONGEST_NAME) {
            throw new IllegalArgumentException("The name (%s) of who changes a project must have 1 to %d characters."
                    .formatted(who, LONGEST_NAME));
        }
        if (why.length() > LONGEST_REASON) {
            throw new IllegalArgumentException("A reason must have at most %d characters.".formatted(LONGEST_REASON));
        }
    }
}
