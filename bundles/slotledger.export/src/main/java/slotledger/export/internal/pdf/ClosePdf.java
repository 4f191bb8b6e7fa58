package slotledger.export.internal.pdf;

import com.lowagie.text.Image;
import com.lowagie.text.pdf.PdfPTable;
import java.io.OutputStream;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import slotledger.export.ExportException;
import slotledger.export.internal.close.CloseWords;
import slotledger.export.internal.text.WholeFile;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.proof.CloseOut;
import slotledger.model.proof.ClosingProof;
import slotledger.model.proof.Deviation;
import slotledger.model.proof.LeftOver;
import slotledger.model.proof.OpenPoints;
import slotledger.model.proof.ProofOutcome;
import slotledger.model.unit.Money;

/** How a plan ended, for those who paid for it: money, targets, deviations, leftovers, open points. */
public final class ClosePdf {

    /** Beyond these the workbook tells more. */
    private static final int MOST_ROLES = 20;
    private static final int MOST_DEVIATIONS = 60;

    private final CloseOut close;

    public ClosePdf(CloseOut close) {
        this.close = close;
    }

    public void write(Path file) throws ExportException {
        WholeFile.write(file, this::print);
    }

    private void print(OutputStream out) {
        try (Paper paper = new Paper(out, close.plan().title() + ", close-out of " + close.date())) {
            // else a chart that needs a new page comes after what follows it
            paper.writer().setStrictImageSequence(true);
            paper.begin("Close-out");
            paper.heading("Close-out: " + close.plan().title(), 16);
            paper.paragraph("Plan " + close.order().number() + " of " + close.plan().date() + ", closed on "
                    + close.date() + ". " + close.order().approval().map(each -> "Approved by "
                            + ((TradeEvent.Approved) each.event()).by() + ".").orElse("Approved by nobody."));
            openPoints(paper);
            targets(paper);
            money(paper);
            ends(paper);
            deviations(paper);
            leftovers(paper);
        }
    }

    private void openPoints(Paper paper) {
        paper.heading("Open points", 12);
        List<String> points = OpenPoints.of(close);
        if (points.isEmpty()) {
            paper.paragraph("None: all is done and proved.");
            return;
        }
        PdfPTable table = Paper.table(4, 96);
        for (String point : points) {
            table.addCell(paper.box());
            table.addCell(paper.cell(point, paper.fonts().regular(Paper.TEXT), 0));
        }
        paper.add(table);
    }

    private void targets(Paper paper) {
        paper.heading("Machines on target", 12);
        paper.paragraph(CloseWords.targets(close));
        List<BarsPainter.Group> groups = close.roles().stream().limit(MOST_ROLES)
                .map(role -> new BarsPainter.Group((role.role().isEmpty() ? "(no role)" : role.role()) + ", "
                        + role.machines(), List.of(role.before(), role.planned(), role.proved()))).toList();
        if (!groups.isEmpty()) {
            paper.add(Image.getInstance(new BarsPainter(paper.fonts(), List.of("before", "planned", "proved"),
                    Paper.WIDTH).paint(paper.writer().getDirectContent(), groups)));
        }
    }

    private void money(Paper paper) {
        paper.heading("Money, without tax", 12);
        PdfPTable table = paper.list(List.of("Order line", "Ordered", "Good", "Wrong", "Dead", "Ordered for", "Arrived",
                "To claim"), 32, 9, 8, 8, 8, 12, 12, 11);
        Money zero = Money.zero(close.plan().policy().currency());
        Money arrived = zero;
        Money claim = zero;
        for (CloseOut.LineMoney each : close.money()) {
            table.addCell(paper.cell(each.line().purchase().offer().id()));
            table.addCell(paper.cell(each.line().purchase().modules() + ""));
            table.addCell(paper.cell(each.line().good() + ""));
            table.addCell(paper.cell(each.line().wrong() + ""));
            table.addCell(paper.cell(each.line().dead() + ""));
            table.addCell(paper.cell(each.ordered().toString()));
            table.addCell(paper.cell(each.arrived().toString()));
            table.addCell(paper.cell(each.claim().toString()));
            arrived = arrived.plus(each.arrived());
            claim = claim.plus(each.claim());
        }
        paper.add(table);
        paper.paragraph("Goods " + close.plan().spending().goods() + ", delivery "
                + close.plan().spending().deliveryTotal() + ", to pay to suppliers "
                + close.plan().spending().payable() + ". As ordered arrived goods for " + arrived + "; " + claim
                + " is missing, wrong or dead and to be claimed. Own labour, at the rates of the policy: "
                + close.plan().spending().labour() + ".");
    }

    private void ends(Paper paper) {
        close.closing().map(ClosingProof::proof).ifPresent(proof -> {
            paper.heading("How machines ended", 12);
            PdfPTable table = paper.list(List.of("", "All machines", "Of these, to be opened"), 40, 30, 30);
            for (ProofOutcome outcome : ProofOutcome.values()) {
                table.addCell(paper.cell(outcome.text()));
                table.addCell(paper.cell(proof.count(outcome) + ""));
                table.addCell(paper.cell(proof.machines().stream().filter(machine -> machine.outcome() == outcome
                        && machine.plan().isOpened()).count() + ""));
            }
            paper.add(table);
        });
    }

    private void deviations(Paper paper) {
        List<Deviation> all = close.closing().map(ClosingProof::deviations).orElse(List.of());
        if (all.isEmpty()) {
            return;
        }
        paper.heading("Deviations", 12);
        PdfPTable table = paper.list(List.of("Machine", "What", "Planned", "Found", "Cheapest repair"),
                13, 18, 20, 20, 29);
        Set<Deviation.Kind> kinds = EnumSet.noneOf(Deviation.Kind.class);
        for (Deviation each : all) {
            kinds.add(each.kind());
        }
        all.stream().limit(MOST_DEVIATIONS).forEach(each -> {
            table.addCell(paper.cell(each.machine() + (each.where().isEmpty() ? "" : ", " + each.where())));
            table.addCell(paper.cell(each.kind().text()));
            table.addCell(paper.cell(each.planned()));
            table.addCell(paper.cell(each.found()));
            table.addCell(paper.cell(each.repair()));
        });
        paper.add(table);
        if (all.size() > MOST_DEVIATIONS) {
            paper.paragraph((all.size() - MOST_DEVIATIONS) + " more are in the workbook.");
        }
        for (Deviation.Kind kind : kinds) {
            paper.heading("Where it says \"" + kind.text() + "\", look in this order", 9.5f);
            PdfPTable causes = Paper.table(4, 96);
            int number = 1;
            for (Deviation.Cause cause : kind.causes()) {
                causes.addCell(paper.cell(number++ + ".", paper.fonts().regular(Paper.TEXT), 0));
                causes.addCell(paper.cell(cause.toString(), paper.fonts().regular(Paper.TEXT), 0));
            }
            paper.add(causes);
        }
    }

    private void leftovers(Paper paper) {
        paper.heading("Leftovers", 12);
        PdfPTable table = paper.list(List.of("Count", "What", "Goes to", "Where it lies"), 8, 38, 14, 40);
        for (LeftOver each : LeftOver.of(close)) {
            table.addCell(paper.cell(each.count() + ""));
            table.addCell(paper.cell(each.content().toString()));
            table.addCell(paper.cell(CloseWords.way(each)));
            table.addCell(paper.cell(CloseWords.place(each)));
        }
        paper.add(table);
    }
}
