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
 * @param foot      lines at the foot of each slot, for what the plan does
 * @param lefts     left edge of each picture
 * @param tops      upper edge of each picture, where its title is
 * @param width     of all pictures
 * @param height    of all pictures
 */
record SlotLayout(
        int boxWidth,
        int boxHeight,
        int line,
        int foot,
        List<Integer> lefts,
        List<Integer> tops,
        int width,
        int height) {

    static final int PAD = 7;
    static final int GAP = 8;

    /** Lines above the content of a slot, for label and place; lines above a picture's slots. */
    static final int HEAD_LINES = 2;
    static final int TITLE_LINES = 2;

    private static final int LEAST_WIDTH = 90;

    /** How wide texts are. */
    @FunctionalInterface
    interface Measure {
        int width(String text, boolean bold);
    }

    SlotLayout {
        lefts = List.copyOf(lefts);
        tops = List.copyOf(tops);
    }

    static SlotLayout of(List<SlotPicture> pictures, int available, int line, Measure measure) {
        Objects.requireNonNull(measure, "measure");
        int boxWidth = boxes(pictures).mapToInt(box -> textWidth(box, measure))
                .reduce(LEAST_WIDTH, Math::max) + 2 * PAD;
        int most = boxes(pictures).mapToInt(box -> box.lines().size()).max().orElse(0);
        int foot = 1 + boxes(pictures).mapToInt(box -> box.wayLines().size()).max().orElse(0);
        int boxHeight = (HEAD_LINES + most + foot) * line + 3 * PAD;
        int[] widths = pictures.stream().mapToInt(picture -> Math.max(picture.columns() * (boxWidth + GAP) - GAP,
                Math.max(measure.width(picture.title(), true), measure.width(picture.facts(), false)))).toArray();
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
        return new SlotLayout(boxWidth, boxHeight, line, foot, lefts, tops, width, height);
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

    private static int textWidth(SlotBox box, Measure measure) {
        String mark = box.change().symbol() + " " + box.change().word();
        Stream<String> bold = Stream.concat(box.lines().stream().limit(1), Stream.of(box.label(), mark));
        Stream<String> plain = Stream.concat(
                box.lines().stream().skip(1), Stream.concat(box.wayLines().stream(), Stream.of(box.place())));
        return IntStream.concat(bold.mapToInt(text -> measure.width(text, true)),
                plain.mapToInt(text -> measure.width(text, false))).max().orElse(0);
    }
}
