package slotledger.workbench.internal.fleet;

import org.eclipse.nebula.widgets.nattable.data.IDataProvider;

/** The line of headings. */
final class FleetHeadings implements IDataProvider {

    @Override
    public Object getDataValue(int column, int row) {
        return FleetColumn.values()[column].heading();
    }

    @Override
    public void setDataValue(int column, int row, Object value) {
        throw new UnsupportedOperationException("A heading can't be changed.");
    }

    @Override
    public int getColumnCount() {
        return FleetColumn.values().length;
    }

    @Override
    public int getRowCount() {
        return 1;
    }
}
