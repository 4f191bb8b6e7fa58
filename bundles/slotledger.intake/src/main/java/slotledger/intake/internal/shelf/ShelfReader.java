package slotledger.intake.internal.shelf;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.fleet.CellReader;
import slotledger.intake.internal.offer.KindReader;
import slotledger.intake.internal.offer.RowKinds;
import slotledger.intake.internal.sheet.SheetFile;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.table.TableFiles;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.table.TableVisitor;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.finding.Finding;
import slotledger.model.module.Piece;
import slotledger.model.observed.TableUse;
import slotledger.model.task.Progress;
import slotledger.model.trade.Shelf;

/** Reads lists of modules and fillers that are owned and not in a machine. */
public final class ShelfReader {

    public static final String HEADINGS = "shelf-headings.txt";
    private static final int LEAST_FIELDS = 2;

    private final TableFiles tables;

    public ShelfReader(SheetFile sheets) {
        tables = new TableFiles(sheets, HEADINGS, LEAST_FIELDS,
                "a table with headings such as module and count");
    }

    public Reading<Shelf> read(List<Path> files, Progress progress) throws IntakeException {
        Rows rows = new Rows();
        List<TableUse> uses = tables.read(files, rows, rows.findings::add, progress);
        return new Reading<>(new Shelf(rows.pieces), uses, rows.findings);
    }

    private static final class Rows implements TableVisitor {

        private final List<Finding> findings = new ArrayList<>();
        private final Map<Piece, Integer> pieces = new LinkedHashMap<>();
        private final CellReader cells = new CellReader(findings::add);
        private final KindReader kinds = new KindReader(findings::add);

        @Override
        public void startTable(Table table) {
            if (!table.has(Field.COUNT)) {
                findings.add(Doubt.note("no-count-column",
                        "This table has no column of counts; each row was counted once.",
                        "a column of counts", "Add the column if a row stands for several modules.")
                        .at(table.headerPlace(), ""));
            }
        }

        @Override
        public void row(TableRow row) {
            Optional<Doubt> aside = row.table().has(Field.COUNT) ? RowKinds.aside(row) : Optional.empty();
            if (aside.isPresent()) {
                findings.add(aside.get().at(row.place(), row.shown()));
                return;
            }
            OptionalInt count = row.table().has(Field.COUNT) ? cells.count(row, Field.COUNT) : OptionalInt.of(1);
            if (count.isEmpty()) {
                findings.add(Doubt.error("count-missing", "It is not said how many there are; the row was left out.",
                        "a whole number", "Count them.").at(row.place(Field.COUNT), row.shown()));
                return;
            }
            if (count.getAsInt() == 0) {
                findings.add(Doubt.note("count-zero", "There are none of these; the row was left out.", "", "Nothing.")
                        .at(row.place(Field.COUNT), row.shown()));
                return;
            }
            kinds.read(row).ifPresent(read ->
                    pieces.merge(read.piece(), Math.multiplyExact(count.getAsInt(), read.count()), Integer::sum));
        }
    }
}
