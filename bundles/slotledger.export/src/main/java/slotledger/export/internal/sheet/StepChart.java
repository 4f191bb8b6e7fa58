package slotledger.export.internal.sheet;

import org.apache.poi.ss.util.CellRangeAddress;
import org.apache.poi.xddf.usermodel.PresetColor;
import org.apache.poi.xddf.usermodel.XDDFColor;
import org.apache.poi.xddf.usermodel.XDDFLineProperties;
import org.apache.poi.xddf.usermodel.XDDFSolidFillProperties;
import org.apache.poi.xddf.usermodel.chart.AxisCrosses;
import org.apache.poi.xddf.usermodel.chart.AxisPosition;
import org.apache.poi.xddf.usermodel.chart.ChartTypes;
import org.apache.poi.xddf.usermodel.chart.LegendPosition;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import org.apache.poi.xddf.usermodel.chart.ScatterStyle;
import org.apache.poi.xddf.usermodel.chart.XDDFDataSourcesFactory;
import org.apache.poi.xddf.usermodel.chart.XDDFNumericalDataSource;
import org.apache.poi.xddf.usermodel.chart.XDDFScatterChartData;
import org.apache.poi.xddf.usermodel.chart.XDDFValueAxis;
import org.apache.poi.xssf.usermodel.XSSFChart;
import org.apache.poi.xssf.usermodel.XSSFDrawing;

/** A chart of points below a table on the same sheet. It reads the table's cells, so it follows them. */
public final class StepChart {

    private static final double LINE_POINTS = 1.5;
    private static final int ROWS = 22;

    private final Page page;
    private final XSSFChart chart;
    private final XDDFValueAxis bottom;
    private final XDDFScatterChartData data;

    /**
     * Begins a chart two rows below the last row of the page.
     *
     * @param columns how many columns it is wide
     */
    public StepChart(Page page, String title, String across, String up, int columns) {
        this.page = page;
        XSSFDrawing drawing = page.sheet().createDrawingPatriarch();
        int top = page.rowNumber() + 2;
        chart = drawing.createChart(drawing.createAnchor(0, 0, 0, 0, 0, top, columns, top + ROWS));
        chart.setTitleText(title);
        chart.setTitleOverlay(false);
        chart.getOrAddLegend().setPosition(LegendPosition.BOTTOM);
        bottom = chart.createValueAxis(AxisPosition.BOTTOM);
        bottom.setTitle(across);
        bottom.setMinimum(0);
        XDDFValueAxis left = chart.createValueAxis(AxisPosition.LEFT);
        left.setTitle(up);
        left.setMinimum(0);
        left.setCrosses(AxisCrosses.AUTO_ZERO);
        data = (XDDFScatterChartData) chart.createData(ChartTypes.SCATTER, bottom, left);
        data.setStyle(ScatterStyle.LINE_MARKER);
    }

    /** Adds points whose places stand in two columns of the page. */
    public StepChart series(String name, MarkerStyle marker, int first, int last, int across, int up) {
        XDDFScatterChartData.Series series =
                (XDDFScatterChartData.Series) data.addSeries(cells(first, last, across), cells(first, last, up));
        series.setTitle(name, null);
        series.setSmooth(false);
        series.setMarkerStyle(marker);
        XDDFLineProperties line = new XDDFLineProperties(
                new XDDFSolidFillProperties(XDDFColor.from(marker == MarkerStyle.CIRCLE
                        ? PresetColor.DARK_BLUE : PresetColor.GRAY)));
        line.setWidth(LINE_POINTS);
        series.setLineProperties(line);
        return this;
    }

    private XDDFNumericalDataSource<Double> cells(int first, int last, int column) {
        return XDDFDataSourcesFactory.fromNumericCellRange(
                page.sheet(), new CellRangeAddress(first, last, column, column));
    }

    public void draw() {
        chart.plot(data);
    }
}
