package slotledger.export.internal.matrix;

import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.model.board.Board;
import slotledger.model.board.BoardFact;
import slotledger.model.board.Slot;

/** What a matrix rests on: the board's slots, and every fact with its source. */
final class BoardPage {

    private static final int[] WIDTHS = {26, 14, 12, 12, 16, 60, 44};

    private BoardPage() {
    }

    static void fill(Book workbook, Board board) {
        Page page = workbook.page("Board", WIDTHS);
        page.title(board.name());
        page.note("%s, board %s. Main document: %s".formatted(board.form().text(), board.id(), board.source()));
        page.section("Slots");
        page.subheader("Slot", "Channel", "Place in it", "Processor", "Colour", "What it is", "Who says so");
        for (Slot slot : board.slots()) {
            page.next().text(0, slot.label(), Look.STRONG).text(1, slot.channel()).count(2, slot.position())
                    .count(3, board.channel(slot.channel()).processor()).text(4, slot.colour().orElse(""))
                    .text(5, use(slot))
                    .text(6, board.sourceOf(slot.isSocket() ? BoardFact.SLOTS : fact(slot)).toString());
        }
        page.section("Facts");
        page.subheader("Fact", "Value", "", "", "", "", "Who says so");
        for (FactLine fact : FactLine.of(board)) {
            page.next().text(0, fact.name(), Look.STRONG).text(1, 5, fact.value())
                    .text(6, fact.value().isEmpty() ? "" : board.sourceOf(fact.fact()).toString());
        }
        if (!board.notes().isEmpty()) {
            page.section("Notes for whoever opens it");
            board.notes().forEach(note -> page.across("• " + note));
        }
    }

    private static BoardFact fact(Slot slot) {
        return slot.soldered().isPresent() ? BoardFact.SOLDERED : BoardFact.SLOTS;
    }

    private static String use(Slot slot) {
        return switch (slot.use()) {
            case SOCKET -> "socket";
            case SOLDERED -> "soldered memory: " + slot.soldered().map(Object::toString)
                    .orElse("what is soldered differs from machine to machine");
            case DEAD -> "a connector that is not wired: nothing works in it";
        };
    }
}
