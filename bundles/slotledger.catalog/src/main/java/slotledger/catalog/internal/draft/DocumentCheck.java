package slotledger.catalog.internal.draft;

import java.util.List;
import slotledger.model.board.Board;
import slotledger.model.finding.Finding;
import slotledger.model.observed.BoardReport;

/** Compares what firmware says of a documented board with its document, which is believed. */
final class DocumentCheck {

    private DocumentCheck() {
    }

    static void compare(List<BoardReport> model, Board board, List<Finding> findings) {
        for (BoardReport report : model) {
            report.largestTotal()
                    .filter(total -> board.largestTotal().filter(known -> !known.equals(total)).isPresent())
                    .ifPresent(total -> findings.add(DraftMaker.finding(report, "firmware-against-document",
                            "The firmware says that the board takes %s, its document (%s) says %s; the document holds."
                                    .formatted(total, board.source(), board.largestTotal().get()),
                            "numbers that agree", "Check the page, and whether a newer firmware takes more.")));
            int listed = report.machine().slots().size();
            if (listed != board.slots().size() && listed != board.sockets().size()) {
                findings.add(DraftMaker.finding(report, "firmware-against-document",
                        "The firmware lists %d slots, the board's document (%s) %d; the document holds."
                                .formatted(listed, board.source(), board.slots().size()),
                        "numbers that agree", "Check the model; maybe it is a variant with a board of its own."));
            }
        }
    }
}
