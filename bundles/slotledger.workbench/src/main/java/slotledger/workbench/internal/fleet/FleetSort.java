package slotledger.workbench.internal.fleet;

import java.util.Comparator;
import java.util.List;
import org.eclipse.nebula.widgets.nattable.sort.ISortModel;
import org.eclipse.nebula.widgets.nattable.sort.SortDirectionEnum;

/** Lets the grid's headings sort the table: one column at a time. */
final class FleetSort implements ISortModel {

    private final FleetTable table;
    private final Runnable refresh;

    FleetSort(FleetTable table, Runnable refresh) {
        this.table = table;
        this.refresh = refresh;
    }

    @Override
    public List<Integer> getSortedColumnIndexes() {
        return table.sorted().map(FleetColumn::ordinal).stream().toList();
    }

    @Override
    public boolean isColumnIndexSorted(int column) {
        return getSortedColumnIndexes().contains(column);
    }

    @Override
    public SortDirectionEnum getSortDirection(int column) {
        return !isColumnIndexSorted(column) ? SortDirectionEnum.NONE
                : table.isDescending() ? SortDirectionEnum.DESC : SortDirectionEnum.ASC;
    }

    @Override
    public int getSortOrder(int column) {
        return isColumnIndexSorted(column) ? 0 : -1;
    }

    @Override
    @SuppressWarnings("rawtypes") // as the interface has it
    public List<Comparator> getComparatorsForColumnIndex(int column) {
        return List.of(FleetColumn.values()[column].order());
    }

    @Override
    public Comparator<?> getColumnComparator(int column) {
        return FleetColumn.values()[column].order();
    }

    @Override
    public void sort(int column, SortDirectionEnum direction, boolean accumulate) {
        if (direction == SortDirectionEnum.NONE) {
            table.unsort();
        } else {
            table.sort(FleetColumn.values()[column], direction == SortDirectionEnum.DESC);
        }
        refresh.run();
    }

    @Override
    public void clear() {
        table.unsort();
        refresh.run();
    }
}
