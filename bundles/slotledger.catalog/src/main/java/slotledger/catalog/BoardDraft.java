package slotledger.catalog;

import java.util.List;
import java.util.Objects;
import slotledger.model.board.BoardId;

/**
 * A board file made of what firmware says, for a person to check.
 *
 * @param id       of the board
 * @param name     maker and model
 * @param machines how many machines of the model it was made of
 * @param yaml     the file's text
 * @param open     what firmware can't tell or tells wrongly, in words
 */
public record BoardDraft(BoardId id, String name, int machines, String yaml, List<String> open) {

    public BoardDraft {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(name, "name");
        Objects.requireNonNull(yaml, "yaml");
        open = List.copyOf(open);
        if (machines < 1) {
            throw new IllegalArgumentException("The draft %s must be made of a machine.".formatted(id));
        }
    }

    /** "kestrin-kb-510.draft.yaml" */
    public String fileName() {
        return id.value() + ".draft.yaml";
    }
}
