package slotledger.catalog;

import java.util.List;
import slotledger.catalog.internal.draft.DraftMaker;
import slotledger.model.finding.Finding;
import slotledger.model.observed.BoardReport;

/**
 * Boards drafted from firmware.
 *
 * @param drafts   one for each model whose firmware tells enough, by name
 * @param findings models without a draft and why, machines of one model that contradict each other, and firmware that
 *                 contradicts a documented board
 */
public record BoardDrafts(List<BoardDraft> drafts, List<Finding> findings) {

    public BoardDrafts {
        drafts = List.copyOf(drafts);
        findings = List.copyOf(findings);
    }

    /**
     * Drafts a board for each model that no document in the catalog speaks of.
     *
     * @param reports one a machine; the more machines of a model, the more its draft says
     */
    public static BoardDrafts of(List<BoardReport> reports, Catalog catalog) {
        return DraftMaker.make(reports, catalog);
    }
}
