package slotledger.catalog;

import java.util.List;
import java.util.Objects;
import slotledger.model.board.Board;

/** The answer to "which board is this". */
public sealed interface BoardMatch {

    /**
     * Exactly one board is meant.
     *
     * @param board the board
     * @param by    how it was found
     */
    record Found(Board board, By by) implements BoardMatch {
        public Found {
            Objects.requireNonNull(board, "board");
            Objects.requireNonNull(by, "by");
        }
    }

    /**
     * No board is surely meant.
     *
     * @param suggestions boards with a similar name, most similar first; never taken without a person's word
     */
    record NotFound(List<Board> suggestions) implements BoardMatch {
        public NotFound {
            suggestions = List.copyOf(suggestions);
        }
    }

    /** How a board was found. */
    enum By {
        /** Maker and model name as the catalog has them. */
        NAME,
        /** One of the board's other names. */
        ALIAS,
        /** A name that differs in case, blanks or punctuation only. */
        NORMALISED_NAME
    }
}
