package slotledger.export.internal.difference;

import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.model.difference.Difference;
import slotledger.model.difference.DifferenceText;
import slotledger.model.difference.LineChange;
import slotledger.model.difference.MachineChange;
import slotledger.model.machine.Machine;
import slotledger.model.plan.Plan;

/** What is different between two plans, on one sheet. */
public final class DifferencePage {

    private static final int[] WIDTHS = {30, 22, 36, 36, 16, 48};

    private final Difference difference;
    private final DifferenceText text;
    private final Page page;

    private DifferencePage(Difference difference, Page page) {
        this.difference = difference;
        this.text = new DifferenceText(difference);
        this.page = page;
    }

    public static void add(Book workbook, Difference difference) {
        new DifferencePage(difference, workbook.page("What changed", WIDTHS)).fill();
    }

    private void fill() {
        page.title("What changed against the earlier plan");
        page.note("Earlier: %s. Later: %s.".formatted(name(difference.before()), name(difference.after())));
        if (difference.isNone()) {
            page.next().text(0, DifferenceText.NONE, Look.STRONG);
        }
        page.gap();
        figures();
        page.gap();
        terms();
        page.gap();
        lines();
        page.gap();
        machines();
    }

    private static String name(Plan plan) {
        return plan.title() + ", plan of " + plan.date();
    }

    private void figures() {
        page.section("Money and machines");
        page.subheader("What", "", "Earlier", "Later", "Change", "In words");
        text.money().forEach(amount -> page.next().text(0, 1, amount.name()).money(2, amount.before())
                .money(3, amount.after()).money(4, amount.change()).text(5, amount.words()));
        text.counts().forEach(count -> page.next().text(0, 1, count.name()).count(2, count.before())
                .count(3, count.after()).count(4, count.change()).text(5, count.words()));
    }

    private void terms() {
        page.section("What was wanted or decided differently");
        if (difference.terms().isEmpty()) {
            page.next().text(0, "Policy and choices are the same.");
            return;
        }
        page.subheader("What", "", "Earlier", "Later");
        difference.terms().forEach(term -> page.next().text(0, 1, term.what()).text(2, term.before())
                .text(3, term.after()));
    }

    private void lines() {
        page.section("Purchase lines");
        if (difference.lines().isEmpty()) {
            page.next().text(0, "The same is bought.");
            return;
        }
        page.subheader("Supplier and part", "What became of it", "Packs earlier", "Packs later", "Change", "Module");
        difference.lines().forEach(this::line);
    }

    private void line(LineChange line) {
        page.next().text(0, line.offer().supplier() + ", " + line.offer().part()).text(1, line.kind().text())
                .count(2, line.packsBefore()).count(3, line.packsAfter())
                .money(4, DifferenceText.amount(line).change()).text(5, line.offer().piece().toString());
    }

    private void machines() {
        page.section("Machines");
        if (difference.machines().isEmpty()) {
            page.next().text(0, "Every machine ends with the same modules.");
            return;
        }
        page.subheader("Machine and place", "Role", "After the earlier plan", "After the later plan",
                "On target", "Why");
        difference.machines().forEach(this::machine);
    }

    private void machine(MachineChange change) {
        Machine machine = change.machine();
        page.next().text(0, machine.tag() + ", " + machine.where()).text(1, machine.role())
                .text(2, DifferenceText.before(change)).text(3, DifferenceText.after(change))
                .text(4, DifferenceText.target(change)).text(5, change.why());
    }
}
