package slotledger.export.internal.html;

import java.time.LocalDate;
import java.util.List;
import slotledger.export.internal.code.TagCode;
import slotledger.export.internal.job.JobSheet;
import slotledger.export.internal.job.Line;
import slotledger.export.internal.job.SlotGrid;
import slotledger.export.internal.job.SlotState;
import slotledger.export.internal.text.Texts;
import slotledger.export.internal.text.Words;

/** One machine's job sheet as a page that reads well on a phone. */
final class SheetPage {

    private static final int TURNED_FROM = 7;
    private static final int PATTERNS = 8;
    private static final int LONG_TAG = 40;

    private final JobSheet sheet;
    private final String project;
    private final Html html;
    private int inputs;

    SheetPage(JobSheet sheet, String project, LocalDate date) {
        this.sheet = sheet;
        this.project = project;
        String tag = sheet.machine().tag().value();
        this.html = new Html(Texts.line(tag) + ": job sheet", project + " " + date + " " + tag);
    }

    String text() {
        head();
        if (!sheet.heed().isEmpty()) {
            html.raw("<div class=\"heed\">\n");
            sheet.heed().forEach(line -> html.raw("<p>").line(line).raw("</p>\n"));
            html.raw("</div>\n");
        }
        html.raw("<div class=\"box\"><h2>Before you open it</h2>\n");
        list(sheet.cautions());
        list(sheet.notes());
        html.raw("</div>\n<h2>Slots</h2>\n<h3>Before</h3>\n");
        picture(sheet.before());
        html.raw("<h3>After</h3>\n");
        picture(sheet.after());
        html.raw("<h2>Steps</h2>\n<ol class=\"tick\">\n");
        int number = 1;
        for (Line step : sheet.steps()) {
            tick(number++ + ".", step);
        }
        html.raw("</ol>\n<h2>A step back</h2>\n<p>").line(sheet.stepBack()).raw("</p>\n");
        result();
        records();
        notes();
        return html.done();
    }

    private void head() {
        String tag = sheet.machine().tag().value();
        html.raw("<p><a href=\"index.html\">All machines</a></p>\n<header>\n");
        html.raw(tag.length() > LONG_TAG ? "<h1 class=\"long\">" : "<h1>").name(tag).raw("</h1>\n<p><b>")
                .name(sheet.place()).raw("</b></p>\n<p class=\"facts\">").name(sheet.board().name())
                .text(", " + sheet.board().form().text());
        if (!sheet.machine().serial().isEmpty()) {
            html.text(", serial number ").name(sheet.machine().serial());
        }
        html.raw("<br>").text("Number " + sheet.orderOf() + " on the round").raw("</p>\n");
        TagCode.of(sheet.machine().tag()).ifPresentOrElse(
                code -> html.raw(CodeSvg.of(code)),
                () -> html.element("p", "The tag is too long for a scannable code."));
        html.raw("</header>\n");
    }

    private void picture(List<SlotState> states) {
        SlotGrid grid = new SlotGrid(states.stream().map(SlotState::slot).toList());
        if (!grid.isKnown()) {
            html.element("p", "Where the slots are on the board is not known: look at the printed labels.");
        }
        boolean turned = grid.columns() >= TURNED_FROM;
        if (turned) {
            html.element("p class=\"small\"", "Drawn turned by a quarter: the board's left slot is at the top.");
        }
        html.raw("<div class=\"slots%s\" style=\"--columns:%d\">\n".formatted(
                turned ? " turned" : "", turned ? grid.rows() : grid.columns()));
        for (SlotState state : states) {
            int channel = sheet.channels().indexOf(state.slot().channel());
            int row = grid.rowOf(state.slot()) + 1;
            int column = grid.columnOf(state.slot()) + 1;
            html.raw("<div class=\"slot %s c%d\" style=\"grid-row:%d;grid-column:%d\"><b>".formatted(state.mark().key(),
                    channel % PATTERNS, turned ? column : row, turned ? row : column));
            html.name(state.slot().label()).raw("</b> <span class=\"mark\">").text(state.mark().text()).raw("</span> ");
            if (!state.content().isEmpty()) {
                html.raw("<span>").text(Words.inSlot(state.content())).raw("</span> ");
            }
            html.raw("<span class=\"channel\">channel ").name(state.slot().channel())
                    .raw(" <span class=\"band\"></span></span></div>\n");
        }
        html.raw("</div>\n");
    }

    private void result() {
        html.raw("<h2>What results</h2>\n<ul>\n");
        sheet.expected().forEach(line -> html.raw("<li>").line(line).raw("</li>\n"));
        html.raw("</ul>\n<h2>What the firmware should show</h2>\n");
        list(sheet.firmware());
        html.raw("<ul class=\"tick\">\n");
        tick("", Line.of("Firmware shows the total and the slots as above."));
        tick("", Line.of("The operating system starts and shows the memory."));
        tick("", Line.of("A memory test ran without an error."));
        html.raw("</ul>\n");
    }

    private void records() {
        html.raw("<h2>For the record</h2>\n");
        for (SlotState state : sheet.received()) {
            field("Serial number of the module in slot %s (%s)"
                    .formatted(state.slot().label(), Words.brief(state.content())));
        }
        field("Done by, date and time");
        field("Anything that differs");
        html.element("p class=\"small\"", "What you tick and write stays in this browser on this device only. Copy it "
                + "to the printed sheet, or take an inventory afterwards and have it compared with the plan.");
    }

    private void notes() {
        html.raw("<p class=\"small\">Facts about the board are from: ");
        html.text(String.join("; ", sheet.sources())).raw(".</p>\n<p class=\"small\">").name(project).raw("</p>\n");
    }

    private void list(List<String> lines) {
        if (!lines.isEmpty()) {
            html.raw("<ul>\n");
            lines.forEach(line -> html.element("li", line));
            html.raw("</ul>\n");
        }
    }

    private void tick(String number, Line line) {
        html.raw("<li><label><input type=\"checkbox\" name=\"i%d\">".formatted(inputs++));
        if (!number.isEmpty()) {
            html.raw("<span class=\"number\">").text(number).raw("</span>");
        }
        html.raw("<span>").line(line).raw("</span></label></li>\n");
    }

    private void field(String label) {
        html.raw("<label class=\"field\">").text(label)
                .raw("<input type=\"text\" autocomplete=\"off\" name=\"i%d\"></label>\n".formatted(inputs++));
    }
}
