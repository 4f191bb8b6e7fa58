package slotledger.catalog;

import java.util.List;
import java.util.Optional;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;

/** All known boards. */
public interface Catalog {

    /** Every board, by id. */
    List<Board> boards();

    Optional<Board> find(BoardId id);

    /** Which board a maker and a model name mean; either may be blank. */
    BoardMatch match(String maker, String model);
}
