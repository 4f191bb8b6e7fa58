package slotledger.rules.spi;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.rules.Setup;

/**
 * Makes situations, and keeps what it worked out of each board. Safe for use by several threads.
 */
public final class Situations {

    private final Map<BoardId, Layout> layouts = new ConcurrentHashMap<>();

    /**
     * The population seen by each way of filling that the board allows, at least one. Fails where the population names
     * a slot the board doesn't have.
     */
    public List<Situation> of(Setup setup) {
        Layout layout = layout(setup.board());
        checkSlots(setup, layout);
        if (layout.ways.size() == 1) {
            return List.of(new Situation(setup, layout, layout.ways.get(0)));
        }
        List<Situation> situations = new ArrayList<>(layout.ways.size());
        for (Layout.Way way : layout.ways) {
            situations.add(new Situation(setup, layout, way));
        }
        return situations;
    }

    private Layout layout(Board board) {
        Layout known = layouts.get(board.id());
        if (known == null || known.board != board) {
            known = new Layout(board);
            layouts.put(board.id(), known);
        }
        return known;
    }

    private static void checkSlots(Setup setup, Layout layout) {
        for (String label : setup.population().contents().keySet()) {
            if (!layout.labels.contains(label)) {
                throw new IllegalArgumentException("The slot %s of the population must be one of board %s."
                        .formatted(label, setup.board().id()));
            }
        }
    }
}
