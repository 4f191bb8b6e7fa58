package slotledger.intake.internal.offer;

import java.util.Optional;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.ModuleText;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Words;

/** Tells rows that are notes or sums from rows that mean something. */
public final class RowKinds {

    private RowKinds() {
    }

    /** What the row is, where it is a note or a sum. */
    public static Optional<Doubt> aside(TableRow row) {
        String first = row.cells().stream().map(cell -> Texts.tidy(cell.text())).filter(text -> !text.isEmpty())
                .findFirst().orElse("");
        if (Words.TOTAL.begins(first)) {
            return Optional.of(Doubt.note("totals-row", "This row is a sum.", "", "Nothing."));
        }
        boolean module = ModuleText.read(first, Optional.empty()).facts().capacity().isPresent();
        boolean note = row.filled() == 1 && row.table().columns().size() > 1 && !module
                && row.cells().stream().allMatch(cell -> cell.type() == Cell.Type.TEXT || cell.text().isBlank());
        return note ? Optional.of(Doubt.note("note-row", "This row is a note.", "", "Nothing.")) : Optional.empty();
    }
}
