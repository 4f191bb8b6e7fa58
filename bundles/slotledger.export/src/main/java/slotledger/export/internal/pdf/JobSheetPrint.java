package slotledger.export.internal.pdf;

import com.lowagie.text.Element;
import com.lowagie.text.Image;
import com.lowagie.text.Rectangle;
import com.lowagie.text.pdf.PdfPCell;
import com.lowagie.text.pdf.PdfPTable;
import java.util.List;
import slotledger.export.internal.code.TagCode;
import slotledger.export.internal.job.JobSheet;
import slotledger.export.internal.job.Line;
import slotledger.export.internal.job.SlotGrid;
import slotledger.export.internal.job.SlotState;
import slotledger.export.internal.text.Texts;
import slotledger.export.internal.text.Words;
import slotledger.model.machine.Machine;

/** One machine's job sheet on paper. */
final class JobSheetPrint {

    private static final int BESIDE = 4;
    private static final int SHORT_TAG = 18;
    private static final int LONG_TAG = 60;
    private static final int MOST_OF_TAG = 500;

    private final Paper paper;
    private final Fonts fonts;
    private final JobSheet sheet;

    JobSheetPrint(Paper paper, JobSheet sheet) {
        this.paper = paper;
        this.fonts = paper.fonts();
        this.sheet = sheet;
    }

    void print() {
        head();
        if (!sheet.heed().isEmpty()) {
            paper.add(framed(sheet.heed(), 1.6f));
        }
        pictures();
        heading("Before you open it");
        bullets(sheet.cautions());
        bullets(sheet.notes());
        heading("Steps");
        steps();
        paper.add(stepBack());
        results();
        records();
    }

    private void heading(String text) {
        paper.heading(text, 9.5f);
    }

    private void head() {
        Machine machine = sheet.machine();
        String tag = machine.tag().value();
        float size = tag.length() <= SHORT_TAG ? 20 : tag.length() <= LONG_TAG ? 12 : 8;
        PdfPTable table = Paper.table(66, 34);
        PdfPTable left = Paper.table(1);
        left.addCell(paper.cell("Job sheet, number " + sheet.orderOf() + " on the round", fonts.regular(8), 0));
        left.addCell(paper.cell(Texts.shortened(tag, MOST_OF_TAG), fonts.bold(size), 0));
        left.addCell(paper.cell(sheet.place(), fonts.bold(11), 0));
        left.addCell(paper.cell(sheet.board().name() + ", " + sheet.board().form().text()
                + (machine.serial().isEmpty() ? "" : ", serial number " + machine.serial())
                + (machine.role().isEmpty() ? "" : ", role " + machine.role())
                + (machine.costCentre().isEmpty() ? "" : ", cost centre " + machine.costCentre()),
                fonts.regular(Paper.TEXT), 0));
        PdfPCell text = new PdfPCell(left);
        text.setBorder(Rectangle.BOTTOM);
        text.setBorderWidth(1.5f);
        table.addCell(text);
        PdfPCell code = TagCode.of(machine.tag())
                .map(known -> new PdfPCell(CodeImage.of(known, paper.writer().getDirectContent()), false))
                .orElseGet(() -> paper.cell("The tag is too long for a scannable code.", fonts.regular(7), 0));
        code.setBorder(Rectangle.BOTTOM);
        code.setBorderWidth(1.5f);
        code.setPaddingBottom(6);
        code.setHorizontalAlignment(Element.ALIGN_RIGHT);
        code.setVerticalAlignment(Element.ALIGN_MIDDLE);
        table.addCell(code);
        paper.add(table);
    }

    private PdfPTable framed(List<Line> lines, float border) {
        PdfPTable inner = Paper.table(1);
        lines.forEach(line -> inner.addCell(paper.plain(line)));
        PdfPTable table = Paper.table(1);
        PdfPCell cell = new PdfPCell(inner);
        cell.setBorderWidth(border);
        cell.setPadding(2);
        table.addCell(cell);
        return table;
    }

    private void pictures() {
        SlotGrid grid = new SlotGrid(sheet.before().stream().map(SlotState::slot).toList());
        boolean beside = grid.columns() <= BESIDE;
        PdfPTable table = beside ? Paper.table(48.5f, 3, 48.5f) : Paper.table(1);
        float width = beside ? Paper.WIDTH * 0.485f : Paper.WIDTH;
        if (beside) {
            table.addCell(paper.cell("Slots before", fonts.bold(9.5f), 0));
            table.addCell(paper.cell("", fonts.regular(8), 0));
            table.addCell(paper.cell("Slots after", fonts.bold(9.5f), 0));
            table.addCell(picture(sheet.before(), width));
            table.addCell(paper.cell("", fonts.regular(8), 0));
            table.addCell(picture(sheet.after(), width));
        } else {
            table.addCell(paper.cell("Slots before", fonts.bold(9.5f), 0));
            table.addCell(picture(sheet.before(), width));
            table.addCell(paper.cell("Slots after", fonts.bold(9.5f), 0));
            table.addCell(picture(sheet.after(), width));
        }
        paper.add(table);
        if (!grid.isKnown()) {
            paper.paragraph("Where the slots are on the board is not known: look at the printed labels.");
        }
    }

    private PdfPCell picture(List<SlotState> states, float width) {
        Image image = Image.getInstance(new SlotPainter(fonts, states, sheet.channels(), width)
                .paint(paper.writer().getDirectContent()));
        PdfPCell cell = new PdfPCell(image, false);
        cell.setBorder(Rectangle.NO_BORDER);
        cell.setPadding(0);
        return cell;
    }

    private void bullets(List<String> lines) {
        PdfPTable table = Paper.table(2.2f, 97.8f);
        for (String line : lines) {
            table.addCell(tight(paper.cell("\u2022", fonts.regular(Paper.TEXT), 0)));
            table.addCell(tight(paper.cell(line, fonts.regular(Paper.TEXT), 0)));
        }
        paper.add(table);
    }

    private static PdfPCell tight(PdfPCell cell) {
        cell.setPaddingTop(0);
        cell.setPaddingBottom(1.5f);
        return cell;
    }

    private void steps() {
        PdfPTable table = Paper.table(3.4f, 4, 92.6f);
        int number = 1;
        for (Line step : sheet.steps()) {
            step(table, number++, step);
        }
        paper.add(table);
    }

    private PdfPTable stepBack() {
        PdfPTable table = Paper.table(1);
        table.addCell(tight(paper.plain(Line.of("", "A step back:", " ").plus(sheet.stepBack()))));
        return table;
    }

    private void step(PdfPTable table, int number, Line line) {
        table.addCell(paper.box());
        table.addCell(paper.cell(number + ".", fonts.bold(Paper.TEXT), 0));
        table.addCell(paper.plain(line));
    }

    private void results() {
        PdfPTable table = Paper.table(49, 2, 49);
        table.setKeepTogether(true);
        PdfPTable left = Paper.table(1);
        left.addCell(paper.cell("What results", fonts.bold(9.5f), 0));
        sheet.expected().forEach(line -> left.addCell(tight(paper.plain(line))));
        left.addCell(paper.cell("Facts about the board are from: "
                + Texts.shortened(fonts.printable(String.join("; ", sheet.sources())), 600) + ".",
                fonts.regular(7), 0));
        PdfPTable right = Paper.table(7, 93);
        PdfPCell title = paper.cell("What the firmware should show", fonts.bold(9.5f), 0);
        title.setColspan(2);
        right.addCell(title);
        for (String line : sheet.firmware()) {
            PdfPCell cell = tight(paper.cell(line, fonts.regular(Paper.TEXT), 0));
            cell.setColspan(2);
            right.addCell(cell);
        }
        for (String check : List.of("firmware shows total and slots", "operating system starts and shows the memory",
                "memory test without error")) {
            right.addCell(paper.box());
            right.addCell(tight(paper.cell(check, fonts.regular(Paper.TEXT), 0)));
        }
        for (PdfPTable part : List.of(left, right)) {
            PdfPCell cell = new PdfPCell(part);
            cell.setBorder(Rectangle.TOP);
            cell.setBorderWidth(0.8f);
            table.addCell(cell);
            if (part == left) {
                table.addCell(paper.cell("", fonts.regular(8), 0));
            }
        }
        paper.add(table);
    }

    private void records() {
        if (!sheet.received().isEmpty()) {
            PdfPTable table = paper.list(List.of("Slot", "Module put in", "Serial number of the module"), 18, 30, 52);
            for (SlotState state : sheet.received()) {
                table.addCell(blank(state.slot().label(), 19));
                table.addCell(blank(Words.brief(state.content()), 19));
                table.addCell(blank("", 19));
            }
            paper.add(table);
        }
        PdfPTable sign = Paper.table(34, 26, 40);
        sign.setKeepTogether(true);
        sign.addCell(blank("Done by", 26));
        sign.addCell(blank("Date and time", 26));
        sign.addCell(blank("Signature", 26));
        PdfPCell differs = blank("What differs from the plan", 26);
        differs.setColspan(3);
        sign.addCell(differs);
        paper.add(sign);
    }

    private PdfPCell blank(String text, float height) {
        PdfPCell cell = paper.cell(text, fonts.regular(text.length() > 30 ? 7 : 8), Rectangle.BOX);
        cell.setMinimumHeight(height);
        return cell;
    }
}
