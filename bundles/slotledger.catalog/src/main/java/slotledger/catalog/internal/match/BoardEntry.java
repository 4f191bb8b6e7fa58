package slotledger.catalog.internal.match;

import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import slotledger.model.board.Board;

/**
 * A board and the names it goes by.
 *
 * @param board        the board
 * @param makerAliases other names of its maker
 * @param file         the file it was read from, for findings
 */
public record BoardEntry(Board board, List<String> makerAliases, String file) {

    public BoardEntry {
        Objects.requireNonNull(board, "board");
        makerAliases = List.copyOf(makerAliases);
        Objects.requireNonNull(file, "file");
    }

    /** The model name and all aliases. */
    Stream<String> names() {
        return Stream.concat(Stream.of(board.model()), board.aliases().stream());
    }

    /** The maker's name and its aliases. */
    Stream<String> makers() {
        return Stream.concat(Stream.of(board.maker()), makerAliases.stream());
    }
}
