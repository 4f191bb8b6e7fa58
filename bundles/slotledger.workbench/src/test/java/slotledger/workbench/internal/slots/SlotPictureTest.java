package slotledger.workbench.internal.slots;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class SlotPictureTest {

    @Test
    void twoSlotsAtOnePlaceStandSideBySide() {
        SlotPicture picture = new SlotPicture("Now", "", List.of(box(1, 1, "A"), box(1, 1, "B")));
        assertEquals(List.of(0, 1), picture.boxes().stream().map(SlotBox::column).toList());
        assertEquals(1, picture.rows());
    }

    @Test
    void noTwoChangesShareSymbolAndWord() {
        Set<String> marks = Arrays.stream(SlotChange.values())
                .map(change -> change.symbol() + change.word()).collect(Collectors.toSet());
        Set<String> symbols = Arrays.stream(SlotChange.values()).map(SlotChange::symbol).collect(Collectors.toSet());
        assertEquals(SlotChange.values().length, marks.size());
        assertEquals(SlotChange.values().length, symbols.size());
    }

    @Test
    void whatThePlanTouchesHasABorderOfItsOwn() {
        Set<SlotChange.Border> borders = Set.of(SlotChange.KEPT.border(), SlotChange.NEW.border(),
                SlotChange.MOVED.border(), SlotChange.REMOVED.border());
        assertEquals(4, borders.size());
    }

    @Test
    void picturesStandSideBySideWhereThereIsRoomAndNeverOverlap() {
        List<SlotPicture> pictures = List.of(
                new SlotPicture("Before", "4 GB", List.of(box(0, 0, "A"), box(0, 1, "B"))),
                new SlotPicture("After", "8 GB", List.of(box(0, 0, "A"), box(0, 1, "B"))));
        SlotLayout wide = SlotLayout.of(pictures, 2000, 15, (text, bold) -> 8 * text.length());
        SlotLayout narrow = SlotLayout.of(pictures, 300, 15, (text, bold) -> 8 * text.length());
        assertEquals(wide.tops().get(0), wide.tops().get(1));
        assertEquals(narrow.lefts().get(0), narrow.lefts().get(1));
        assertTrue(wide.lefts().get(1) > wide.left(0, pictures.get(0).boxes().get(1)) + wide.boxWidth());
        assertTrue(narrow.tops().get(1) > narrow.top(0, pictures.get(0).boxes().get(1)) + narrow.boxHeight());
        assertTrue(wide.width() > wide.left(1, pictures.get(1).boxes().get(1)) + wide.boxWidth());
        assertTrue(narrow.height() > narrow.top(1, pictures.get(1).boxes().get(1)) + narrow.boxHeight());
    }

    @Test
    void theLongestTextFitsIntoItsSlot() {
        String longest = "from a machine with a very long asset tag";
        SlotBox box = new SlotBox(0, 0, "A", "", List.of("4 GB"), SlotChange.NEW, longest);
        SlotLayout layout = SlotLayout.of(List.of(new SlotPicture("", "", List.of(box))), 0, 15,
                (text, bold) -> 8 * text.length());
        assertTrue(layout.boxWidth() >= 8 * longest.length());
    }

    @Test
    void aLongWayTakesTwoLinesInsteadOfAWiderSlot() {
        SlotBox box = new SlotBox(0, 0, "A", "", List.of("4 GB"), SlotChange.NEW, "from PC-7, slot DIMM_A1");
        assertEquals(List.of("from PC-7,", "slot DIMM_A1"), box.wayLines());
        assertEquals(List.of(), box(0, 0, "A").wayLines());
    }

    @Test
    void thePictureCanBeReadAloud() {
        String words = new SlotPicture("Now", "4 GB", List.of(box(0, 0, "A1"))).inWords();
        assertEquals("Now. 4 GB. A1: 4 GB, = kept", words);
        assertFalse(words.contains("null"));
    }

    private static SlotBox box(int row, int column, String label) {
        return new SlotBox(row, column, label, "", List.of("4 GB"), SlotChange.KEPT, "");
    }
}
