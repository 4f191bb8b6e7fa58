package slotledger.export.internal.matrix;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.Words;
import slotledger.model.matrix.BoardMatrix.Cell;
import slotledger.model.matrix.BoardMatrix.Column;
import slotledger.model.matrix.BoardMatrix.Row;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;

/** Every reason of a matrix; what is said of several slots in the same words stands once. */
final class ReasonsPage {

    private static final int[] WIDTHS = {5, 30, 14, 12, 16, 46, 27, 36};

    private final Page page;
    private final List<Column> columns;

    private ReasonsPage(Page page, List<Column> columns) {
        this.page = page;
        this.columns = columns;
    }

    static void fill(Book workbook, List<Row> rows, List<Column> columns) {
        Page page = workbook.page("Reasons", WIDTHS);
        page.title("Why");
        page.note("The numbers are those of the sheet Matrix. \"trial\": which sockets were filled, and how it ran. "
                + "Of modules that go in nowhere, rules that pass are left out.");
        page.header("No.", "Module", "Slots", "Weight", "Rule", "Reason", "Who says so", "What to do");
        ReasonsPage reasons = new ReasonsPage(page, columns);
        for (int i = 0; i < rows.size(); i++) {
            reasons.row(i + 1, rows.get(i));
        }
        page.filter(WIDTHS.length);
    }

    private void row(int number, Row row) {
        trials(row).forEach((cell, slots) -> line(number, row, slots, Cells.word(cell.weight()), "trial",
                "Tried in " + String.join(", ", cell.filled())
                        + (cell.weight() == Weight.BLOCKS ? "." : ": " + Words.operation(cell.runs()) + "."), "", ""));
        List<Said> said = new ArrayList<>(said(row).values());
        said.sort(Comparator.comparing((Said each) -> each.reason.weight()).reversed());
        if (row.best() == Weight.BLOCKS) {
            said.removeIf(each -> each.reason.weight() == Weight.PASSES);
        }
        for (Said each : said) {
            reason(number, row, each.slots, each.reason, "");
        }
    }

    private void reason(int number, Row row, List<String> slots, Reason reason, String indent) {
        line(number, row, slots, Cells.word(reason.weight()), reason.rule(), indent + reason.sentence(),
                reason.source().toString(), Cells.remedy(reason));
        reason.because().forEach(finer -> reason(number, row, slots, finer, indent + "→ "));
    }

    private void line(
            int number, Row row, List<String> slots, String weight, String rule, String sentence, String source,
            String remedy) {
        page.next().count(0, number).text(1, row.kind().toString()).text(2, slots(slots)).text(3, weight, Look.STRONG)
                .text(4, rule).text(5, sentence).text(6, source).text(7, remedy);
    }

    private String slots(List<String> slots) {
        long open = columns.stream().filter(Column::isOpen).count();
        return open > 1 && slots.size() == open ? "every socket" : String.join(", ", slots);
    }

    private Map<Cell, List<String>> trials(Row row) {
        Map<Cell, List<String>> trials = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            String name = columns.get(i).name();
            row.cells().get(i).ifPresent(cell -> trials.computeIfAbsent(cell, one -> new ArrayList<>()).add(name));
        }
        return trials;
    }

    private Map<String, Said> said(Row row) {
        Map<String, Said> said = new LinkedHashMap<>();
        for (int i = 0; i < columns.size(); i++) {
            String column = columns.get(i).name();
            Optional<Cell> cell = row.cells().get(i);
            if (cell.isEmpty()) {
                continue;
            }
            for (Reason reason : cell.get().verdict().reasons()) {
                Said same = said.computeIfAbsent(key(reason), one -> new Said(reason, new ArrayList<>()));
                if (!same.slots.contains(column)) {
                    same.slots.add(column);
                }
            }
        }
        return said;
    }

    /** Two sentences that differ in nothing but the slot are one. */
    private static String key(Reason reason) {
        String sentence = reason.sentence();
        for (String slot : reason.slots()) {
            sentence = sentence.replaceAll("\\bslot " + Pattern.quote(slot) + "(?![\\p{L}\\p{N}])", "slot *");
        }
        return reason.rule() + "\n" + reason.weight() + "\n" + sentence + "\n" + reason.source();
    }

    /** A reason, and the columns for which it holds. */
    private record Said(Reason reason, List<String> slots) {
    }
}
