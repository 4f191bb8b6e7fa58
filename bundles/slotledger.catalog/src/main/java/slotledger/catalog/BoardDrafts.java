package slotledger.catalog;

import java.util.List;
import slotledger.model.finding.Finding;

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
}
