package slotledger.workbench.internal.fleet;

import org.eclipse.nebula.widgets.nattable.data.IColumnAccessor;
import org.eclipse.nebula.widgets.nattable.layer.LabelStack;
import org.eclipse.nebula.widgets.nattable.layer.cell.IConfigLabelAccumulator;

/** Gives the grid its texts, and tells it which stand at the right. */
final class FleetCells implements IColumnAccessor<FleetRow>, IConfigLabelAccumulator {

    static final String AMOUNT = "amount";

    @Override
    public Object getDataValue(FleetRow row, int column) {
        return FleetColumn.values()[column].text(row);
    }

    @Override
    public void setDataValue(FleetRow row, int column, Object value) {
        throw new UnsupportedOperationException("The fleet is read from files and can't be changed here.");
    }

    @Override
    public int getColumnCount() {
        return FleetColumn.values().length;
    }

    @Override
    public void accumulateConfigLabels(LabelStack labels, int column, int row) {
        if (FleetColumn.values()[column].isAmount()) {
            labels.addLabel(AMOUNT);
        }
    }
}
