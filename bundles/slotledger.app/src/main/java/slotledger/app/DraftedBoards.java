package slotledger.app;

import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import slotledger.model.board.BoardId;
import slotledger.model.finding.Finding;

/**
 * Board files that were drafted from firmware.
 *
 * @param boards   one a file, by name
 * @param findings models without a draft, machines of one model that contradict each other
 */
public record DraftedBoards(List<Drafted> boards, List<Finding> findings) {

    public DraftedBoards {
        boards = List.copyOf(boards);
        findings = List.copyOf(findings);
    }

    /**
     * One draft.
     *
     * @param machines it was made of
     * @param open     what a person must find out, in words
     */
    public record Drafted(BoardId id, String name, int machines, List<String> open, Path file) {
        public Drafted {
            Objects.requireNonNull(id, "id");
            Objects.requireNonNull(name, "name");
            open = List.copyOf(open);
            Objects.requireNonNull(file, "file");
        }
    }
}
