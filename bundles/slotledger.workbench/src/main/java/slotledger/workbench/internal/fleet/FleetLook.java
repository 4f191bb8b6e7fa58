package slotledger.workbench.internal.fleet;

import org.eclipse.nebula.widgets.nattable.config.AbstractRegistryConfiguration;
import org.eclipse.nebula.widgets.nattable.config.CellConfigAttributes;
import org.eclipse.nebula.widgets.nattable.config.IConfigRegistry;
import org.eclipse.nebula.widgets.nattable.grid.GridRegion;
import org.eclipse.nebula.widgets.nattable.painter.cell.BackgroundPainter;
import org.eclipse.nebula.widgets.nattable.painter.cell.ICellPainter;
import org.eclipse.nebula.widgets.nattable.painter.cell.TextPainter;
import org.eclipse.nebula.widgets.nattable.painter.cell.decorator.PaddingDecorator;
import org.eclipse.nebula.widgets.nattable.sort.painter.SortableHeaderTextPainter;
import org.eclipse.nebula.widgets.nattable.style.CellStyleAttributes;
import org.eclipse.nebula.widgets.nattable.style.DisplayMode;
import org.eclipse.nebula.widgets.nattable.style.HorizontalAlignmentEnum;
import org.eclipse.nebula.widgets.nattable.style.Style;
import org.eclipse.swt.SWT;
import org.eclipse.swt.widgets.Display;

/** The grid in the colours of the desktop, light or dark. */
final class FleetLook extends AbstractRegistryConfiguration {

    private static final int PADDING = 5;

    private final Display display;

    FleetLook(Display display) {
        this.display = display;
    }

    @Override
    public void configureRegistry(IConfigRegistry registry) {
        Style body = style(SWT.COLOR_LIST_BACKGROUND, SWT.COLOR_LIST_FOREGROUND, HorizontalAlignmentEnum.LEFT);
        register(registry, body, DisplayMode.NORMAL, GridRegion.BODY);
        register(registry, style(SWT.COLOR_LIST_BACKGROUND, SWT.COLOR_LIST_FOREGROUND, HorizontalAlignmentEnum.RIGHT),
                DisplayMode.NORMAL, FleetCells.AMOUNT);
        register(registry, style(SWT.COLOR_LIST_SELECTION, SWT.COLOR_LIST_SELECTION_TEXT, HorizontalAlignmentEnum.LEFT),
                DisplayMode.SELECT, GridRegion.BODY);
        register(registry,
                style(SWT.COLOR_LIST_SELECTION, SWT.COLOR_LIST_SELECTION_TEXT, HorizontalAlignmentEnum.RIGHT),
                DisplayMode.SELECT, FleetCells.AMOUNT);
        Style heading = style(SWT.COLOR_WIDGET_BACKGROUND, SWT.COLOR_WIDGET_FOREGROUND, HorizontalAlignmentEnum.LEFT);
        register(registry, heading, DisplayMode.NORMAL, GridRegion.COLUMN_HEADER);
        register(registry, heading, DisplayMode.SELECT, GridRegion.COLUMN_HEADER);
        registry.registerConfigAttribute(CellConfigAttributes.CELL_PAINTER, padded(new TextPainter()));
        registry.registerConfigAttribute(CellConfigAttributes.CELL_PAINTER,
                padded(new SortableHeaderTextPainter(new TextPainter())), DisplayMode.NORMAL, GridRegion.COLUMN_HEADER);
        registry.registerConfigAttribute(
                CellConfigAttributes.GRID_LINE_COLOR, display.getSystemColor(SWT.COLOR_WIDGET_LIGHT_SHADOW));
    }

    private static ICellPainter padded(ICellPainter text) {
        return new BackgroundPainter(new PaddingDecorator(text, 0, PADDING, 0, PADDING));
    }

    private Style style(int background, int foreground, HorizontalAlignmentEnum alignment) {
        Style style = new Style();
        style.setAttributeValue(CellStyleAttributes.BACKGROUND_COLOR, display.getSystemColor(background));
        style.setAttributeValue(CellStyleAttributes.FOREGROUND_COLOR, display.getSystemColor(foreground));
        style.setAttributeValue(CellStyleAttributes.HORIZONTAL_ALIGNMENT, alignment);
        return style;
    }

    private static void register(IConfigRegistry registry, Style style, DisplayMode mode, String label) {
        registry.registerConfigAttribute(CellConfigAttributes.CELL_STYLE, style, mode, label);
    }
}
