package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;

class BoardSearchTest {

    private static final List<Board> BOARDS = List.of(
            board("kestrin-kb510", "Kestrin", "KB-510", List.of("Desk 510")),
            board("kestrin-kb515", "Kestrin", "KB-515", List.of()),
            board("orvane-n250", "Orvane", "N250", List.of("Voyager")),
            board("tarn-voyager", "Tarn", "Voyager", List.of()));

    @ParameterizedTest
    @ValueSource(strings = {"kestrin-kb510", "KB-510", "kb 510", "Kestrin KB-510", "desk 510"})
    void aBoardIsFoundByIdNameModelAndAlias(String wanted) throws DeskException {
        assertEquals("kestrin-kb510", BoardSearch.find(BOARDS, wanted).id().value());
    }

    @Test
    void anUnknownBoardNamesThoseThatAreNearFirst() {
        String message = refused(BOARDS, "kestrin-kb51");
        assertTrue(message.startsWith("The project has no board \"kestrin-kb51\". The nearest are kestrin-kb510 "
                + "(Kestrin KB-510), kestrin-kb515 (Kestrin KB-515), "), message);
        assertTrue(refused(BOARDS, "orvame-n250").contains("The nearest are orvane-n250"));
    }

    @Test
    void aNameOfTwoBoardsIsNotGuessed() {
        assertEquals("Several boards are named \"voyager\": orvane-n250 (Orvane N250), tarn-voyager (Tarn Voyager). "
                + "Name one by its id.", refused(BOARDS, "voyager"));
    }

    @Test
    void aProjectWithoutBoardsSaysSo() {
        assertTrue(refused(List.of(), "").contains("has no boards at all"));
    }

    private static String refused(List<Board> boards, String wanted) {
        DeskException problem = assertThrows(DeskException.class, () -> BoardSearch.find(boards, wanted));
        assertEquals(Trouble.INPUT, problem.trouble());
        return problem.getMessage();
    }

    private static Board board(String id, String maker, String model, List<String> aliases) {
        Board any = new SmallWorld().fleet().boards().values().iterator().next();
        return new Board(new BoardId(id), maker, model, aliases, any.form(), any.processorSockets(), any.processors(),
                any.channels(), any.slots(), any.takes(), any.largestTotal(), any.addressable(), any.fill(),
                any.banks(), any.redundancies(), any.interleave(), any.rateLimits(), any.notes(), any.source(),
                any.sources());
    }
}
