package slotledger.export.internal.job;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import slotledger.model.board.Slot;

/**
 * Where slots are drawn: by the board's rows and columns, unused ones left out. Where two slots claim one place, the
 * board doesn't say where they are, and they are drawn one after the other.
 */
public final class SlotGrid {

    private static final int FALLBACK_COLUMNS = 8;

    private final List<Integer> rows;
    private final List<Integer> columns;
    private final List<Slot> slots;
    private final boolean known;

    public SlotGrid(List<Slot> slots) {
        this.slots = List.copyOf(slots);
        Set<List<Integer>> places = new HashSet<>();
        slots.forEach(slot -> places.add(List.of(slot.row(), slot.column())));
        known = places.size() == slots.size();
        Set<Integer> usedRows = new TreeSet<>();
        Set<Integer> usedColumns = new TreeSet<>();
        slots.forEach(slot -> usedRows.add(slot.row()));
        slots.forEach(slot -> usedColumns.add(slot.column()));
        rows = new ArrayList<>(usedRows);
        columns = new ArrayList<>(usedColumns);
    }

    /** Whether the picture shows where the slots are. */
    public boolean isKnown() {
        return known;
    }

    public int rows() {
        return known ? rows.size() : (slots.size() + FALLBACK_COLUMNS - 1) / FALLBACK_COLUMNS;
    }

    public int columns() {
        return known ? columns.size() : Math.min(slots.size(), FALLBACK_COLUMNS);
    }

    public int rowOf(Slot slot) {
        return known ? rows.indexOf(slot.row()) : slots.indexOf(slot) / FALLBACK_COLUMNS;
    }

    public int columnOf(Slot slot) {
        return known ? columns.indexOf(slot.column()) : slots.indexOf(slot) % FALLBACK_COLUMNS;
    }
}
