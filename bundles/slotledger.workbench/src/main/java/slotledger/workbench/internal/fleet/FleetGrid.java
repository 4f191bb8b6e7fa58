package slotledger.workbench.internal.fleet;

import java.util.Arrays;
import java.util.function.Consumer;
import org.eclipse.nebula.widgets.nattable.NatTable;
import org.eclipse.nebula.widgets.nattable.config.DefaultNatTableStyleConfiguration;
import org.eclipse.nebula.widgets.nattable.data.IRowDataProvider;
import org.eclipse.nebula.widgets.nattable.data.ListDataProvider;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.grid.layer.ColumnHeaderLayer;
import org.eclipse.nebula.widgets.nattable.grid.layer.DefaultColumnHeaderDataLayer;
import org.eclipse.nebula.widgets.nattable.layer.CompositeLayer;
import org.eclipse.nebula.widgets.nattable.layer.DataLayer;
import org.eclipse.nebula.widgets.nattable.resize.config.DefaultColumnResizeBindings;
import org.eclipse.nebula.widgets.nattable.selection.RowSelectionModel;
import org.eclipse.nebula.widgets.nattable.selection.SelectionLayer;
import org.eclipse.nebula.widgets.nattable.selection.command.SelectRowsCommand;
import org.eclipse.nebula.widgets.nattable.selection.config.RowOnlySelectionBindings;
import org.eclipse.nebula.widgets.nattable.selection.config.RowOnlySelectionConfiguration;
import org.eclipse.nebula.widgets.nattable.selection.event.RowSelectionEvent;
import org.eclipse.nebula.widgets.nattable.sort.SortHeaderLayer;
import org.eclipse.nebula.widgets.nattable.sort.config.SingleClickSortConfiguration;
import org.eclipse.nebula.widgets.nattable.viewport.ViewportLayer;
import org.eclipse.nebula.widgets.nattable.viewport.command.ShowRowInViewportCommand;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Composite;
import org.eclipse.swt.widgets.Control;
import slotledger.model.machine.AssetTag;
import slotledger.workbench.internal.Ids;

/** The grid itself: one line a machine, sorted by a click on a heading. */
final class FleetGrid {

    private static final int ROW_HEIGHT = 22;

    private final FleetTable table;
    private final IRowDataProvider<FleetRow> body;
    private final SelectionLayer selection;
    private final ViewportLayer viewport;
    private final NatTable grid;

    FleetGrid(Composite parent, FleetTable table, Consumer<FleetRow> selected) {
        this.table = table;
        body = new ListDataProvider<>(table.visible(), new FleetCells());
        DataLayer data = new DataLayer(body);
        for (FleetColumn column : FleetColumn.values()) {
            data.setColumnWidthPercentageByPosition(column.ordinal(), 100d * column.width() / widths());
            data.setMinColumnWidth(column.ordinal(), column.width());
        }
        data.setColumnPercentageSizing(true);
        data.setDefaultRowHeight(ROW_HEIGHT);
        data.setConfigLabelAccumulator(new FleetCells());
        selection = new SelectionLayer(data, false);
        selection.setSelectionModel(new RowSelectionModel<>(selection, body, row -> row.tag().value(), false));
        selection.addConfiguration(new RowOnlySelectionConfiguration());
        viewport = new ViewportLayer(selection);
        viewport.setRegionName(GridRegion.BODY);
        DataLayer headingData = new DefaultColumnHeaderDataLayer(new FleetHeadings());
        headingData.setDefaultRowHeight(ROW_HEIGHT);
        ColumnHeaderLayer headings = new ColumnHeaderLayer(headingData, viewport, selection, false);
        headings.addConfiguration(new DefaultColumnResizeBindings());
        CompositeLayer all = new CompositeLayer(1, 2);
        all.setChildLayer(GridRegion.COLUMN_HEADER,
                new SortHeaderLayer<FleetRow>(headings, new FleetSort(table, this::refresh), false), 0, 0);
        all.setChildLayer(GridRegion.BODY, viewport, 0, 1);
        grid = new NatTable(parent, all, false);
        grid.setBackground(grid.getDisplay().getSystemColor(SWT.COLOR_LIST_BACKGROUND));
        grid.setData(Ids.WIDGET, Ids.FLEET_GRID);
        grid.addConfiguration(new DefaultNatTableStyleConfiguration());
        grid.addConfiguration(new SingleClickSortConfiguration());
        grid.addConfiguration(new RowOnlySelectionBindings());
        grid.addConfiguration(new FleetLook(grid.getDisplay()));
        grid.configure();
        selection.addLayerListener(event -> {
            if (event instanceof RowSelectionEvent) {
                selection.getSelectedRowPositions().stream().flatMap(range -> range.getMembers().stream())
                        .filter(row -> row < table.visible().size())
                        .findFirst().ifPresent(row -> selected.accept(table.visible().get(row)));
            }
        });
    }

    private static int widths() {
        return Arrays.stream(FleetColumn.values()).mapToInt(FleetColumn::width).sum();
    }

    Control control() {
        return grid;
    }

    void refresh() {
        grid.refresh();
    }

    /** Selects a machine's line and scrolls to it, where the filter lets it show. */
    void reveal(AssetTag tag) {
        int row = table.indexOf(tag);
        if (row >= 0 && !selection.isRowPositionSelected(row)) {
            selection.doCommand(new SelectRowsCommand(selection, 0, row, false, false));
            viewport.doCommand(new ShowRowInViewportCommand(row));
        }
    }
}
