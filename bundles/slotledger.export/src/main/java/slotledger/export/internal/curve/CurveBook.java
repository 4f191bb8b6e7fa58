package slotledger.export.internal.curve;

import java.nio.file.Path;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.poi.xddf.usermodel.chart.MarkerStyle;
import slotledger.export.ExportException;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.sheet.StepChart;
import slotledger.export.internal.text.WholeFile;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.Figures;

/** The workbook of a curve of budgets: one table, one chart. */
public final class CurveBook {

    private static final int[] WIDTHS = {16, 16, 18, 20, 18, 18, 30};
    private static final int BUDGET = 0;
    private static final int WEIGHT = 2;
    private static final int WEIGHT_BOUND = 3;

    private final BudgetCurve curve;
    private final String title;

    public CurveBook(BudgetCurve curve, String title) {
        this.curve = curve;
        this.title = title;
    }

    public void write(Path file) throws ExportException {
        WholeFile.write(file, out -> {
            try (Book workbook = new Book("Budgets: " + title,
                    curve.points().get(0).budget().currency())) {
                fill(workbook.page("Budgets", WIDTHS));
                workbook.save(out);
            }
        });
    }

    private void fill(Page page) {
        page.onOnePage();
        page.title("What each budget brings: " + title);
        page.across("A budget limits goods and delivery, with tax only where the policy says so. With each budget a"
                + " plan was found that has the figures of its line; a plan made with that budget has as many on"
                + " target by weight or more, but never more than is possible at most. Machines count by the weights"
                + " of the policy; all machines with a target together count " + curve.withTarget() + ".");
        page.gap();
        page.subheader("Budget", "Machines on target", "On target by weight, at least", "At most possible",
                "To pay to suppliers", "Cost with labour", "Remark");
        int first = page.rowNumber() + 1;
        curve.points().forEach(point -> line(page, point));
        new StepChart(page, "Machines on target by budget", "Budget, " + currency(), "On target, by weight",
                WIDTHS.length)
                .series("found: at least", MarkerStyle.CIRCLE, first, page.rowNumber(), BUDGET, WEIGHT)
                .series("possible: at most", MarkerStyle.DASH, first, page.rowNumber(), BUDGET, WEIGHT_BOUND)
                .draw();
    }

    private String currency() {
        return curve.points().get(0).budget().currency().getCurrencyCode();
    }

    private void line(Page page, BudgetCurve.Point point) {
        Figures figures = point.figures();
        page.next().money(BUDGET, point.budget()).count(1, figures.onTarget()).count(WEIGHT, figures.weight())
                .count(WEIGHT_BOUND, figures.weightBound()).money(4, figures.payable()).money(5, figures.cost())
                .text(6, remark(point));
    }

    private static boolean isBest(BudgetCurve.Point point) {
        return point.figures().weight() == point.figures().weightBound();
    }

    private String remark(BudgetCurve.Point point) {
        boolean isLast = point.equals(curve.points().get(curve.points().size() - 1));
        boolean isAsked = curve.asked().filter(point.budget()::equals).isPresent();
        String asked = isAsked ? "the budget of the policy" : "";
        String most = isLast && isBest(point) ? "more money brings no more" : "";
        String doubt = isBest(point) ? "" : "a better plan may exist";
        return Stream.of(asked, most, doubt).filter(each -> !each.isEmpty()).collect(Collectors.joining("; "));
    }
}
