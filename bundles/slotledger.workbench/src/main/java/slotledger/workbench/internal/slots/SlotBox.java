package slotledger.workbench.internal.slots;

import java.util.Arrays;
import java.util.List;
import java.util.Objects;

/**
 * One slot in a picture.
 *
 * @param row    0 at the top
 * @param column 0 at the left
 * @param label  as printed on the board
 * @param place  channel and position
 * @param lines  what is in it; the first line is the amount
 * @param change what the plan does with it
 * @param way    where its module comes from or goes to; may be empty
 */
public record SlotBox(
        int row, int column, String label, String place, List<String> lines, SlotChange change, String way) {

    public SlotBox {
        Objects.requireNonNull(label, "label");
        Objects.requireNonNull(place, "place");
        lines = List.copyOf(lines);
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(way, "way");
    }

    SlotBox at(int otherRow, int otherColumn) {
        return new SlotBox(otherRow, otherColumn, label, place, lines, change, way);
    }

    /** "from PC-7,", "slot B1": the way on short lines. */
    List<String> wayLines() {
        return Arrays.stream(way.split("(?<=,) ")).filter(line -> !line.isEmpty()).toList();
    }

    /** "= kept", "+ new: from the order". */
    public String mark() {
        return change.symbol() + " " + change.word() + (way.isEmpty() ? "" : ": " + way);
    }
}
