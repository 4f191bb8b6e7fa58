package slotledger.export.internal.pdf;

import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfDestination;
import com.lowagie.text.pdf.PdfOutline;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.List;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.round.Bag;
import slotledger.export.internal.round.BenchWords;
import slotledger.export.internal.round.Partners;
import slotledger.export.internal.round.Round;
import slotledger.export.internal.round.Stop;
import slotledger.export.internal.round.Tasks;
import slotledger.export.internal.text.Lists;
import slotledger.export.internal.text.Texts;
import slotledger.export.internal.text.WholeFile;
import slotledger.export.internal.text.Words;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Machine;
import slotledger.model.observed.ObservedMachine;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.task.Progress;

/** The lists a technician takes along, for printing: what to pack, where to go, what is left, who is not helped. */
public final class RoundsPdf {

    private static final int NAME_LIMIT = 80;

    private final PlanBook book;
    private final Progress progress;
    private final List<Stop> stops;
    private final List<Bag> bags;
    private final Partners partners;

    public RoundsPdf(PlanBook book, Progress progress) {
        this.book = book;
        this.progress = progress;
        this.stops = Round.of(book.plan());
        this.bags = Bag.of(book, stops);
        this.partners = new Partners(book.plan());
    }

    public void write(Path file) throws ExportException {
        WholeFile.write(file, this::print);
    }

    private void print(OutputStream out) {
        try (Paper paper = new Paper(out, book.plan().title() + ", plan of " + book.plan().date())) {
            part(paper, "Pick list");
            picks(paper);
            progress.check();
            part(paper, "Round");
            round(paper);
            progress.check();
            part(paper, "Leftovers");
            leftovers(paper);
            part(paper, "Machines not helped");
            notHelped(paper);
            part(paper, "Machines not planned");
            notPlanned(paper);
        }
    }

    private static void part(Paper paper, String name) {
        paper.begin(name);
        new PdfOutline(paper.writer().getRootOutline(), new PdfDestination(PdfDestination.FIT), name);
        paper.heading(name, 16);
    }

    private void picks(Paper paper) {
        paper.heading("To fetch before the round begins", 11);
        PdfPTable fetch = paper.list(List.of("", "How many", "Module", "From"), 4, 8, 50, 38);
        for (Bag.Item item : Bag.toFetch(bags)) {
            fetch.addCell(box(paper));
            fetch.addCell(paper.cell(Integer.toString(item.count())));
            fetch.addCell(paper.cell(item.content().toString()));
            fetch.addCell(paper.cell(item.from()));
        }
        paper.add(fetch);
        paper.heading("Bags: one for each machine", 11);
        if (bags.isEmpty()) {
            paper.paragraph("No machine gets a module.");
        }
        PdfPTable table = paper.list(List.of("", "Machine", "Into its bag", "From", "For slots"), 4, 28, 20, 35, 13);
        for (Bag bag : bags) {
            Machine machine = bag.plan().machine();
            String name = machine.tag() + ", " + machine.where();
            for (Bag.Item item : bag.items()) {
                table.addCell(box(paper));
                table.addCell(strong(paper, name));
                table.addCell(paper.cell(item.count() + " x " + Words.brief(item.content())));
                table.addCell(paper.cell(item.from() + (item.early() ? "" : " (given on the way)")));
                table.addCell(paper.cell(String.join(", ", item.slots())));
                name = "";
            }
        }
        paper.add(table);
    }

    private void round(Paper paper) {
        paper.paragraph("In walking order. A machine that gives modules comes before those that get them.");
        BenchWords.of(book.plan()).forEach(paper::paragraph);
        int number = 0;
        String site = null;
        for (Stop stop : stops) {
            if (!stop.where().site().equals(site)) {
                site = stop.where().site();
                paper.heading("Site: " + Texts.or(site, "not known"), 12);
            }
            paper.heading("Room: " + Texts.or(stop.where().room(), "not known") + (stop.again() ? " (again)" : ""), 10);
            PdfPTable table = paper.list(
                    List.of("", "No.", "Machine", "What to do", "Modules of other machines", "After"),
                    5, 6, 20, 36, 21, 12);
            for (MachinePlan plan : stop.machines()) {
                table.addCell(box(paper));
                table.addCell(paper.cell(Integer.toString(++number)));
                table.addCell(strong(paper, plan.machine().tag().value()));
                table.addCell(paper.cell(Tasks.of(plan)));
                table.addCell(paper.cell(partners.of(plan)));
                table.addCell(paper.cell(Words.memory(plan.runsAfter())));
            }
            paper.add(table);
        }
        if (stops.isEmpty()) {
            paper.paragraph("No machine needs to be opened.");
        }
    }

    private void leftovers(Paper paper) {
        PdfPTable table = paper.list(List.of("", "How many", "What", "Where from", "Where to"), 5, 10, 53, 16, 16);
        for (Leftover leftover : book.plan().leftovers()) {
            table.addCell(box(paper));
            table.addCell(paper.cell(Integer.toString(leftover.count())));
            table.addCell(paper.cell(leftover.content().toString()));
            table.addCell(paper.cell(leftover.origin().text()));
            table.addCell(strong(paper, Words.station(leftover.to(), book)));
        }
        paper.add(table);
        paper.paragraph("Test pulled modules before they are used again; keep them in antistatic bags with kind and "
                + "date on them. Memory modules keep nothing without power, except those with a battery or flash of "
                + "their own.");
    }

    private void notHelped(Paper paper) {
        List<MachinePlan> plans = Lists.notOnTarget(book.plan());
        if (plans.isEmpty()) {
            paper.paragraph("Every machine that has a target reaches it.");
            return;
        }
        PdfPTable table = paper.list(
                List.of("Machine", "Target", "How it runs after", "Why", "What would change it"), 21, 13, 19, 27, 20);
        for (MachinePlan plan : plans) {
            table.addCell(strong(paper, plan.machine().tag() + ", " + plan.machine().where()));
            table.addCell(paper.cell(Words.target(plan.target())));
            table.addCell(paper.cell(plan.outcome().text() + ": " + Words.operation(plan.runsAfter())));
            table.addCell(paper.cell(plan.obstacle()
                    .map(obstacle -> obstacle.kind().text() + ": " + Words.obstacle(obstacle)).orElse("not known")));
            table.addCell(paper.cell(plan.obstacle().map(obstacle -> obstacle.freedBy()).orElse("")));
        }
        paper.add(table);
    }

    private void notPlanned(Paper paper) {
        if (book.unresolved().isEmpty()) {
            paper.paragraph("Every machine of the inventory was planned.");
            return;
        }
        paper.paragraph("A fact is missing for these machines. Look at it on the machine, correct the inventory or add "
                + "the board to the catalog, and plan again.");
        PdfPTable table = paper.list(List.of("", "Machine", "As written", "What is the matter", "What to do"),
                5, 21, 20, 28, 26);
        for (ObservedMachine machine : book.unresolved()) {
            List<Finding> findings = Lists.about(machine, book.findings());
            table.addCell(box(paper));
            table.addCell(strong(paper, machine.tag() + ", " + machine.where()));
            table.addCell(paper.cell((machine.maker() + " " + machine.model()).strip()
                    + (machine.place().row().isPresent() ? " (" + machine.place() + ")" : "")));
            table.addCell(paper.cell(findings.isEmpty() ? Lists.NO_FINDING
                    : String.join(" ", findings.stream().map(Lists::matter).distinct().toList())));
            table.addCell(paper.cell(findings.isEmpty() ? Lists.NO_REMEDY
                    : String.join(" ", findings.stream().map(Finding::remedy).distinct().toList())));
        }
        paper.add(table);
    }

    private static PdfPCell strong(Paper paper, String text) {
        return paper.cell(Texts.shortened(text, NAME_LIMIT), paper.fonts().bold(Paper.TEXT), Rectangle.BOTTOM);
    }

    private static PdfPCell box(Paper paper) {
        PdfPCell cell = paper.box();
        cell.setBorder(Rectangle.BOTTOM);
        cell.setBorderWidth(0.5f);
        return cell;
    }
}
