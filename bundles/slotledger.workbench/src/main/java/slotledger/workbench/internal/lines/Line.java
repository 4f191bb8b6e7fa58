package slotledger.workbench.internal.lines;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.AssetTag;

/**
 * One line of a table that can be opened to finer ones.
 *
 * @param cells    what stands in each column
 * @param inFull   everything the line says, for the lines below the table
 * @param machine  the machine the line leads to, where there is one
 * @param children finer lines
 */
public record Line(List<String> cells, String inFull, Optional<AssetTag> machine, List<Line> children) {

    public Line {
        cells = List.copyOf(cells);
        Objects.requireNonNull(inFull, "inFull");
        Objects.requireNonNull(machine, "machine");
        children = List.copyOf(children);
    }

    /** A heading in the first column over finer lines. */
    public static Line heading(String text, List<Line> children) {
        return new Line(List.of(text), text, Optional.empty(), children);
    }

    /** A line that leads nowhere; it says in full what its cells say. */
    public static Line of(String... cells) {
        return new Line(List.of(cells), String.join(" · ", cells), Optional.empty(), List.of());
    }

    /** What stands in a column; empty where the line has nothing there. */
    public String cell(int column) {
        return column < cells.size() ? cells.get(column) : "";
    }
}
