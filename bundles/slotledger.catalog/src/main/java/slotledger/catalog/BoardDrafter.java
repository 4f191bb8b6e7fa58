package slotledger.catalog;

import java.util.List;
import slotledger.model.observed.BoardReport;

/** Drafts boards from firmware. */
public interface BoardDrafter {

    /**
     * Drafts a board for each model that no document in the catalog speaks of.
     *
     * @param reports one a machine; the more machines of a model, the more its draft says
     */
    BoardDrafts draft(List<BoardReport> reports, Catalog catalog);
}
