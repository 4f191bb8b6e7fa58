package slotledger.export.internal.close;

import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import slotledger.export.ExportException;
import slotledger.export.internal.sheet.BarChart;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.WholeFile;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.machine.AssetTag;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.Deviation;
import slotledger.model.proof.LeftOver;
import slotledger.model.proof.OpenPoints;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.unit.Money;
import slotledger.model.work.Job;

/** How a plan ended, as a workbook that can be filtered and summed. */
public final class CloseBook {

    private static final int[] SUMMARY_WIDTHS = {44, 18, 18, 18, 18, 18};
    private static final int[] MONEY_WIDTHS = {34, 10, 10, 10, 10, 10, 15, 15, 15};
    private static final int[] DEVIATION_WIDTHS = {12, 26, 12, 34, 34, 46};
    private static final int[] CAUSE_WIDTHS = {30, 6, 70, 50};
    private static final int[] LEFT_WIDTHS = {8, 60, 18, 70};
    private static final int[] JOB_WIDTHS = {14, 18, 44, 22, 44};

    private final CloseOut close;

    public CloseBook(CloseOut close) {
        this.close = close;
    }

    public void write(Path file) throws ExportException {
        WholeFile.write(file, out -> {
            try (Book workbook = new Book("Close-out: " + close.plan().title(), close.plan().policy().currency())) {
                summary(workbook.page("Summary", SUMMARY_WIDTHS));
                money(workbook.page("Money", MONEY_WIDTHS));
                deviations(workbook.page("Deviations", DEVIATION_WIDTHS));
                causes(workbook.page("Causes", CAUSE_WIDTHS));
                leftovers(workbook.page("Leftovers", LEFT_WIDTHS));
                jobs(workbook.page("Jobs", JOB_WIDTHS));
                workbook.save(out);
            }
        });
    }

    private void summary(Page page) {
        page.title("Close-out: " + close.plan().title());
        page.next().text(0, "Day").date(1, Optional.of(close.date()));
        page.next().text(0, "Plan").count(1, close.order().number());
        page.next().text(0, "Approved by").text(1, close.order().approval()
                .map(each -> ((TradeEvent.Approved) each.event()).by()).orElse("nobody"));
        page.gap();
        page.section("Open points");
        List<String> points = OpenPoints.of(close);
        points.forEach(page::across);
        if (points.isEmpty()) {
            page.across("None: all is done and proved.");
        }
        page.gap();
        page.section("Machines on target");
        page.across(CloseWords.targets(close));
        page.subheader("Role", "With a target", "Before", "Planned", "Proved", "Not seen");
        int first = page.rowNumber() + 1;
        for (CloseOut.RoleCount role : close.roles()) {
            page.next().text(0, role.role().isEmpty() ? "(no role)" : role.role()).count(1, role.machines())
                    .count(2, role.before()).count(3, role.planned()).count(4, role.proved()).count(5, role.unknown());
        }
        int last = page.rowNumber();
        if (last >= first) {
            new BarChart(page, "Machines on target", "Machines", SUMMARY_WIDTHS.length).names(first, last, 0)
                    .series("Before", first, last, 2).series("Planned", first, last, 3)
                    .series("Proved", first, last, 4).draw();
        }
    }

    private void money(Page page) {
        page.title("Money, without tax");
        page.note("What arrived counts with its share of the line's total, rounded down; the rest is to be claimed.");
        page.gap();
        page.header("Order line", "Ordered", "Good", "Wrong", "Dead", "Drawn", "Ordered for", "Arrived", "To claim");
        int first = page.rowNumber() + 1;
        Money zero = Money.zero(close.plan().policy().currency());
        Money arrived = zero;
        Money claim = zero;
        for (CloseOut.LineMoney each : close.money()) {
            page.next().text(0, each.line().purchase().offer().id()).count(1, each.line().purchase().modules())
                    .count(2, each.line().good()).count(3, each.line().wrong()).count(4, each.line().dead())
                    .count(5, each.line().drawn()).money(6, each.ordered()).money(7, each.arrived())
                    .money(8, each.claim());
            arrived = arrived.plus(each.arrived());
            claim = claim.plus(each.claim());
        }
        int last = page.rowNumber();
        page.next().text(0, "Goods", Look.STRONG);
        if (last >= first) {
            sum(page, 6, first, last, close.plan().spending().goods());
            sum(page, 7, first, last, arrived);
            sum(page, 8, first, last, claim);
        } else {
            page.money(6, zero).money(7, zero).money(8, zero);
        }
        String goods = page.here(6);
        page.next().text(0, "Delivery").money(6, close.plan().spending().deliveryTotal());
        String delivery = page.here(6);
        page.next().text(0, "To pay to suppliers", Look.STRONG).formula(6, goods + "+" + delivery,
                close.plan().spending().payable(), Look.MONEY_STRONG);
        page.next().text(0, "Own labour, at the rates of the policy").money(6, close.plan().spending().labour());
    }

    private static void sum(Page page, int column, int first, int last, Money value) {
        page.formula(column, "SUM(" + Page.range(first, last, column) + ")", value, Look.MONEY_STRONG);
    }

    private List<Deviation> found() {
        return close.closing().map(closing -> closing.deviations()).orElse(List.of());
    }

    private void deviations(Page page) {
        page.title("What is other than planned").gap();
        page.header("Machine", "What", "Slot", "Planned", "Found", "Cheapest repair");
        for (Deviation each : found()) {
            page.next().text(0, each.machine().value(), Look.STRONG).text(1, each.kind().text()).text(2, each.where())
                    .text(3, each.planned()).text(4, each.found()).text(5, each.repair());
        }
        page.filter(DEVIATION_WIDTHS.length);
    }

    private void causes(Page page) {
        page.title("Where to look, the least effort first").gap();
        page.header("What", "Step", "Look at", "Who says so");
        Set<Deviation.Kind> kinds = EnumSet.noneOf(Deviation.Kind.class);
        found().forEach(each -> kinds.add(each.kind()));
        for (Deviation.Kind kind : kinds) {
            int number = 1;
            for (Deviation.Cause cause : kind.causes()) {
                page.next().text(0, kind.text()).count(1, number++).text(2, cause.text()).text(3, cause.source());
            }
        }
    }

    private void leftovers(Page page) {
        page.title("What is left over, and where it lies").gap();
        page.header("Count", "What", "Goes to", "Where it lies");
        for (LeftOver each : LeftOver.of(close)) {
            page.next().count(0, each.count()).text(1, each.content().toString()).text(2, CloseWords.way(each))
                    .text(3, CloseWords.place(each));
        }
        page.filter(LEFT_WIDTHS.length);
    }

    private void jobs(Page page) {
        page.title("Every job").gap();
        page.header("Machine", "State", "Why", "Proof", "Said to be other than planned");
        var ends = close.ends();
        for (Job job : close.jobs()) {
            AssetTag tag = job.machine();
            page.next().text(0, tag.value(), Look.STRONG).text(1, job.state().text()).text(2, job.reason())
                    .text(3, ends.getOrDefault(tag, ProofOutcome.NOT_SEEN).text())
                    .text(4, String.join("; ", job.deviations().stream()
                            .map(each -> each.slot().isEmpty() ? each.text() : each.slot() + ": " + each.text())
                            .toList()));
        }
        page.filter(JOB_WIDTHS.length);
    }
}
