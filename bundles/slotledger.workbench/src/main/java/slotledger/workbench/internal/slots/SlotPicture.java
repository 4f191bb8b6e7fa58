package slotledger.workbench.internal.slots;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Objects;
import java.util.TreeSet;
import java.util.stream.Collectors;

/**
 * All slots of a machine at one time, where they are on its board.
 *
 * @param title which time
 * @param facts how the machine runs then
 * @param boxes the slots, from the top left; no two at the same place, no empty row or column
 */
public record SlotPicture(String title, String facts, List<SlotBox> boxes) {

    public SlotPicture {
        Objects.requireNonNull(title, "title");
        Objects.requireNonNull(facts, "facts");
        boxes = tidy(boxes);
    }

    public int rows() {
        return boxes.stream().mapToInt(SlotBox::row).max().orElse(-1) + 1;
    }

    public int columns() {
        return boxes.stream().mapToInt(SlotBox::column).max().orElse(-1) + 1;
    }

    /** The picture in words, for those who can't see it. */
    public String inWords() {
        return title + ". " + facts + ". " + boxes.stream()
                .map(box -> box.label() + ": " + String.join(", ", box.lines()) + ", " + box.mark())
                .collect(Collectors.joining(". "));
    }

    /** Closes gaps in rows and columns; a board that puts two slots at one place gets them side by side. */
    private static List<SlotBox> tidy(List<SlotBox> boxes) {
        long places = boxes.stream().map(box -> List.of(box.row(), box.column())).distinct().count();
        List<SlotBox> placed = new ArrayList<>();
        if (places < boxes.size()) {
            boxes.forEach(box -> placed.add(box.at(0, placed.size())));
        } else {
            TreeSet<Integer> rows = boxes.stream().map(SlotBox::row).collect(Collectors.toCollection(TreeSet::new));
            TreeSet<Integer> columns =
                    boxes.stream().map(SlotBox::column).collect(Collectors.toCollection(TreeSet::new));
            boxes.forEach(box -> placed.add(
                    box.at(rows.headSet(box.row()).size(), columns.headSet(box.column()).size())));
        }
        placed.sort(Comparator.comparingInt(SlotBox::row).thenComparingInt(SlotBox::column));
        return List.copyOf(placed);
    }
}
