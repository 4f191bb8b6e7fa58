package slotledger.export.internal.sheet;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrossBetween;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.BarDirection;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.XDDFBarChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryAxis;
import org.apache.poi.xddf.usermodel.chart.XDDFCategoryDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;

/** Bars side by side below a table on the same sheet. They read the table's cells, so they follow them. */
public final class BarChart {

    private static final PresetColor[] COLOURS = {PresetColor.LIGHT_GRAY, PresetColor.GRAY, PresetColor.DARK_BLUE};
    private static final int ROWS = 20;

    private final Page page;
    private final XSSFChart chart;
    private final XDDFBarChartData data;
    private XDDFCategoryDataSource names;
    private int series;

    /**
     * Begins a chart two rows below the last row of the page.
     *
     * @param columns how many columns it is wide
     */
    public BarChart(Page page, String title, String up, int columns) {
        this.page = page;
        XSSFDrawing drawing = page.sheet().createDrawingPatriarch();
        int top = page.rowNumber() + 2;
        chart = drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 0, top, columns, top + ROWS));
        chart.setTitleText(title);
        chart.setTitleOverlay(false);
        chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        XDDFCategoryAxis bottom = chart.createCategoryAxis(AxisPosition.BOTTOM);
        XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
        left.setTitle(up);
        left.setMinimum(0);
        left.setCrossBetween(AxisCrossBetween.BETWEEN);
        data = (XDDFBarChartData) chart.createData(ChartTypes.BAR, bottom, left);
        data.setBarDirection(BarDirection.COL);
    }

    /** Where the names of the groups of bars stand. */
    public BarChart names(int first, int last, int column) {
        names = XDDFDataSourcesFactory.fromStringCellRange(page.sheet(),
                new CellRangeAddress(first, last, column, column));
        return this;
    }

    /** Adds a bar to each group. */
    public BarChart series(String name, int first, int last, int column) {
        XDDFChartData.Series bars = data.addSeries(names, XDDFDataSourcesFactory.fromNumericCellRange(page.sheet(),
                new CellRangeAddress(first, last, column, column)));
        bars.setTitle(name, null);
        bars.setFillProperties(new XDDFSolidFillProperties(XDDFColor.from(COLOURS[series++ % COLOURS.length])));
        return this;
    }

    public void draw() {
        chart.plot(data);
    }
}
