package slotledger.intake.internal.receipt;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.fleet.CellReader;
import slotledger.intake.internal.offer.RowKinds;
import slotledger.intake.internal.sheet.SheetFile;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.table.TableFiles;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.table.TableVisitor;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.delivery.Receipt;
import slotledger.model.finding.Finding;
import slotledger.model.observed.TableUse;
import slotledger.model.task.Progress;

/** Reads lists of what arrived of an order. */
public final class ReceiptReader {

    private static final String HEADINGS = "receipt-headings.txt";
    private static final int LEAST_FIELDS = 2;

    private final TableFiles tables;

    public ReceiptReader(SheetFile sheets) {
        tables = new TableFiles(sheets, HEADINGS, LEAST_FIELDS,
                "a table with the headings part and packs (or modules)");
    }

    /** Reads all files as one list. */
    public Reading<List<Receipt>> read(List<Path> files, Progress progress) throws IntakeException {
        Rows rows = new Rows();
        List<TableUse> uses = tables.read(files, rows, rows.findings::add, progress);
        return new Reading<>(List.copyOf(rows.receipts), uses, rows.findings);
    }

    private static final class Rows implements TableVisitor {

        private final List<Finding> findings = new ArrayList<>();
        private final List<Receipt> receipts = new ArrayList<>();
        private final CellReader cells = new CellReader(findings::add);

        @Override
        public void startTable(Table table) {
            if (!table.has(Field.PART)) {
                findings.add(Doubt.error("no-part-column", "This table has no column of part numbers; none of its rows"
                        + " was used.", "a column part", "Add the part numbers of the order.")
                        .at(table.headerPlace(), ""));
            }
            if (table.has(Field.PACKS) == table.has(Field.COUNT)) {
                findings.add(Doubt.error("packs-or-modules", "It must be said whether packs or modules were counted;"
                        + " none of the rows was used.", "either a column packs or a column modules",
                        "Keep one of the two columns.").at(table.headerPlace(), ""));
            }
        }

        @Override
        public void row(TableRow row) {
            if (!row.table().has(Field.PART) || row.table().has(Field.PACKS) == row.table().has(Field.COUNT)) {
                return;
            }
            Optional<Doubt> aside = RowKinds.aside(row);
            if (aside.isPresent()) {
                findings.add(aside.get().at(row.place(), row.shown()));
                return;
            }
            String part = cells.text(row, Field.PART);
            Field counted = row.table().has(Field.PACKS) ? Field.PACKS : Field.COUNT;
            OptionalInt count = cells.count(row, counted);
            boolean hasUnusable = !row.text(Field.UNUSABLE).isEmpty();
            OptionalInt unusable = hasUnusable ? cells.count(row, Field.UNUSABLE) : OptionalInt.of(0);
            if (part.isEmpty() || count.isEmpty() || unusable.isEmpty()) {
                Field missing = part.isEmpty() ? Field.PART : count.isEmpty() ? counted : Field.UNUSABLE;
                findings.add(Doubt.error("receipt-incomplete", "It is not said clearly what arrived and how many; the"
                        + " row was left out.", "a part number and a whole number", "Correct the row.")
                        .at(row.place(missing), row.shown()));
                return;
            }
            boolean packs = counted == Field.PACKS;
            receipts.add(new Receipt(cells.text(row, Field.SUPPLIER), part, packs ? count : OptionalInt.empty(),
                    packs ? OptionalInt.empty() : count, unusable.getAsInt(), row.place()));
        }
    }
}
