package slotledger.workbench.internal.slots;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Where everything in the pictures goes: all slots as large as the largest needs, pictures side by side where they
 * fit, else one below the other. All lengths in points of the display.
 *
 * @param boxWidth  width of each slot
 * @param boxHeight height of each slot
 * @param line      height of a line of text
 * @param lefts     left edge of each picture
 * @param tops      upper edge of each picture, where its title is
 * @param width     of all pictures
 * @param height    of all pictures
 */
record SlotLayout(
        int boxWidth, int boxHeight, int line, List<Integer> lefts, List<Integer> tops, int width, int height) {

    static final int PAD = 8;
    static final int GAP = 10;

    /** Lines above the content of a slot (label, place) and below it (mark, way); lines above a picture's slots. */
    static final int HEAD_LINES = 2;
    static final int FOOT_LINES = 2;
    static final int TITLE_LINES = 2;

    private static final int LEAST_WIDTH = 90;

    /** How wide texts are. */
    @FunctionalInterface
    interface Measure {
        int width(String text);
    }

    SlotLayout {
        lefts = List.copyOf(lefts);
        tops = List.copyOf(tops);
    }

    static SlotLayout of(List<SlotPicture> pictures, int available, int line, Measure measure) {
        Objects.requireNonNull(measure, "measure");
        int boxWidth = boxes(pictures).flatMap(SlotLayout::texts).mapToInt(measure::width)
                .reduce(LEAST_WIDTH, Math::max) + 2 * PAD;
        int most = boxes(pictures).mapToInt(box -> box.lines().size()).max().orElse(0);
        int boxHeight = (HEAD_LINES + most + FOOT_LINES) * line + 3 * PAD;
        int[] widths = pictures.stream().mapToInt(picture -> Math.max(picture.columns() * (boxWidth + GAP) - GAP,
                Math.max(measure.width(picture.title()), measure.width(picture.facts())))).toArray();
        int together = IntStream.of(widths).sum() + 3 * GAP * widths.length;
        boolean beside = together <= available;
        List<Integer> lefts = new ArrayList<>();
        List<Integer> tops = new ArrayList<>();
        int x = GAP;
        int y = GAP;
        int width = 0;
        int height = 0;
        for (int index = 0; index < widths.length; index++) {
            lefts.add(x);
            tops.add(y);
            int tall = TITLE_LINES * line + GAP + pictures.get(index).rows() * (boxHeight + GAP);
            width = Math.max(width, x + widths[index] + GAP);
            height = Math.max(height, y + tall);
            x += beside ? widths[index] + 3 * GAP : 0;
            y += beside ? 0 : tall + 2 * GAP;
        }
        return new SlotLayout(boxWidth, boxHeight, line, lefts, tops, width, height);
    }

    int left(int picture, SlotBox box) {
        return lefts.get(picture) + box.column() * (boxWidth + GAP);
    }

    int top(int picture, SlotBox box) {
        return tops.get(picture) + TITLE_LINES * line + GAP + box.row() * (boxHeight + GAP);
    }

    private static Stream<SlotBox> boxes(List<SlotPicture> pictures) {
        return pictures.stream().flatMap(picture -> picture.boxes().stream());
    }

    private static Stream<String> texts(SlotBox box) {
        return Stream.concat(box.lines().stream(),
                Stream.of(box.label(), box.place(), box.change().symbol() + " " + box.change().word(), box.way()));
    }
}
