package slotledger.export.internal.round;

import java.nio.file.Path;
import java.util.List;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.ListPages;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.WholeFile;
import slotledger.export.internal.text.Words;
import slotledger.model.machine.Machine;
import slotledger.model.plan.MachinePlan;
import slotledger.model.task.Progress;

/** The lists of the work as a workbook that can be sorted, shared out and ticked. */
public final class WorkBook {

    private static final int[] ROUND_WIDTHS = {6, 17, 17, 10, 18, 10, 56, 22, 10, 8};
    private static final int[] BAG_WIDTHS = {10, 17, 17, 9, 72, 46, 18, 9};
    private static final int[] FETCH_WIDTHS = {10, 76, 46, 10};

    private final PlanBook book;
    private final Progress progress;
    private final List<Stop> stops;
    private final List<Bag> bags;
    private final Partners partners;

    public WorkBook(PlanBook book, Progress progress) {
        this.book = book;
        this.progress = progress;
        this.stops = Round.of(book.plan());
        this.bags = Bag.of(book, stops);
        this.partners = new Partners(book.plan());
    }

    public void write(Path file) throws ExportException {
        WholeFile.write(file, out -> {
            try (Book workbook = new Book("Work: " + book.plan().title(), book.plan().policy().currency())) {
                round(workbook.page("Round", ROUND_WIDTHS));
                fetch(workbook.page("To fetch", FETCH_WIDTHS));
                bags(workbook.page("Bags", BAG_WIDTHS));
                ListPages.leftovers(workbook, book);
                ListPages.notHelped(workbook, book);
                ListPages.notPlanned(workbook, book);
                progress.check();
                workbook.save(out);
            }
        });
    }

    private void round(Page page) {
        page.title("Round: " + book.plan().title());
        page.note("In walking order. A machine that gives modules comes before those that get them.");
        BenchWords.of(book.plan()).forEach(page::across);
        page.gap();
        page.header("No.", "Site", "Room", "Machine", "Board", "Memory after", "What to do",
                "Modules of other machines", "Done on", "By");
        int number = 0;
        for (Stop stop : stops) {
            for (MachinePlan plan : stop.machines()) {
                Machine machine = plan.machine();
                page.next().count(0, ++number)
                        .text(1, machine.where().site())
                        .text(2, machine.where().room() + (stop.again() ? " (again)" : ""))
                        .text(3, machine.tag().value(), Look.STRONG)
                        .text(4, book.boards().get(machine.board()).name())
                        .text(5, Words.memory(plan.runsAfter()))
                        .text(6, Tasks.of(plan)).text(7, partners.of(plan)).text(8, "").text(9, "");
            }
        }
        if (number == 0) {
            page.next().text(0, "").text(1, "No machine needs to be opened.");
        }
        page.filter(ROUND_WIDTHS.length);
    }

    private void fetch(Page page) {
        page.title("To fetch before the round begins").gap();
        page.header("How many", "Module", "From", "Ticked");
        for (Bag.Item item : Bag.toFetch(bags)) {
            page.next().count(0, item.count()).text(1, item.content().toString()).text(2, item.from()).text(3, "");
        }
    }

    private void bags(Page page) {
        page.title("Bags: one for each machine").gap();
        page.header("Machine", "Site", "Room", "How many", "Module", "From", "For slots", "Ticked");
        for (Bag bag : bags) {
            Machine machine = bag.plan().machine();
            for (Bag.Item item : bag.items()) {
                page.next().text(0, machine.tag().value(), Look.STRONG).text(1, machine.where().site())
                        .text(2, machine.where().room()).count(3, item.count()).text(4, item.content().toString())
                        .text(5, item.from() + (item.early() ? "" : " (on the way)"))
                        .text(6, String.join(", ", item.slots())).text(7, "");
            }
        }
        page.filter(BAG_WIDTHS.length);
    }
}
