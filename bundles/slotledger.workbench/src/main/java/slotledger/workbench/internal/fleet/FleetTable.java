package slotledger.workbench.internal.fleet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.model.machine.AssetTag;

/** What the fleet's grid shows: the lines that pass the filter, in the order asked for. */
public final class FleetTable {

    private final List<FleetRow> visible = new ArrayList<>();
    private List<FleetRow> all = List.of();
    private List<String> words = List.of();
    private Optional<FleetColumn> sorted = Optional.empty();
    private boolean descending;

    public void show(List<FleetRow> rows) {
        all = List.copyOf(rows);
        refresh();
    }

    /** Keeps the lines in which every word of the text occurs, in any column and case. */
    public void filter(String text) {
        words = Arrays.stream(text.strip().split("\\s+")).map(word -> word.toLowerCase(Locale.ROOT))
                .filter(word -> !word.isEmpty()).toList();
        refresh();
    }

    public void sort(FleetColumn column, boolean backwards) {
        sorted = Optional.of(column);
        descending = backwards;
        refresh();
    }

    /** Back to the order of the inventory. */
    public void unsort() {
        sorted = Optional.empty();
        refresh();
    }

    public Optional<FleetColumn> sorted() {
        return sorted;
    }

    public boolean isDescending() {
        return descending;
    }

    /** The lines shown; a live view. */
    public List<FleetRow> visible() {
        return Collections.unmodifiableList(visible);
    }

    public int size() {
        return all.size();
    }

    /** The line of a machine among those shown, or -1. */
    public int indexOf(AssetTag tag) {
        for (int index = 0; index < visible.size(); index++) {
            if (visible.get(index).tag().equals(tag)) {
                return index;
            }
        }
        return -1;
    }

    private void refresh() {
        visible.clear();
        all.stream().filter(this::passes).forEach(visible::add);
        sorted.map(column -> descending ? column.order().reversed() : column.order()).ifPresent(this::order);
    }

    private void order(Comparator<FleetRow> order) {
        visible.sort(order);
    }

    private boolean passes(FleetRow row) {
        String line = Arrays.stream(FleetColumn.values()).map(column -> column.text(row))
                .collect(Collectors.joining("\n")).toLowerCase(Locale.ROOT);
        return words.stream().allMatch(line::contains);
    }
}
