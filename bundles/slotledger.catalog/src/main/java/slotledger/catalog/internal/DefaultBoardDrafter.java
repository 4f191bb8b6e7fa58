package slotledger.catalog.internal;

import java.util.List;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.catalog.BoardDrafter;
import slotledger.catalog.BoardDrafts;
import slotledger.catalog.Catalog;
import slotledger.catalog.internal.draft.DraftMaker;
import slotledger.model.observed.BoardReport;

/** Drafts a board for each model that no document speaks of. */
@Component
public final class DefaultBoardDrafter implements BoardDrafter {

    @Activate
    public DefaultBoardDrafter() {
        // Needs nothing.
    }

    @Override
    public BoardDrafts draft(List<BoardReport> reports, Catalog catalog) {
        return DraftMaker.make(reports, catalog);
    }
}
