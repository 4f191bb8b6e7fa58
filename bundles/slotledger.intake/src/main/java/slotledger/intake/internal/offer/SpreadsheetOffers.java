package slotledger.intake.internal.offer;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.sheet.CellRange;
import slotledger.intake.internal.sheet.SheetFile;
import slotledger.intake.internal.sheet.SheetFiles;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.Headings;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.table.TableFinder;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.table.TableVisitor;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.spi.OfferSource;
import slotledger.intake.spi.ReaderName;
import slotledger.model.finding.Finding;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;

/** Reads offers and price lists kept in spreadsheets and text tables. */
@Component
@ReaderName("spreadsheet offers")
public final class SpreadsheetOffers implements OfferSource {

    public static final String HEADINGS = "offer-headings.txt";
    private static final int LEAST_FIELDS = 2;

    private final SheetFile sheets;

    @Activate
    public SpreadsheetOffers() {
        this(new SheetFiles());
    }

    public SpreadsheetOffers(SheetFile sheets) {
        this.sheets = sheets;
    }

    @Override
    public boolean canRead(Path file) {
        return String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT).matches(".*\\.(xlsx|xlsm|xls|csv|tsv|txt)");
    }

    @Override
    public Reading<Market> read(Path file, Progress progress) throws IntakeException {
        List<Finding> findings = new ArrayList<>();
        Rows rows = new Rows(findings);
        TableFinder finder = new TableFinder(String.valueOf(file.getFileName()), Headings.of(HEADINGS, Map.of()),
                LEAST_FIELDS, rows, findings::add);
        sheets.read(file, finder, progress);
        rows.settle();
        finder.endFile("a table with headings such as supplier, part, module and price");
        return new Reading<>(rows.market.build(), finder.uses(), findings);
    }

    /** Keeps the rows of a table until all are there, since they show together how fractions are marked. */
    private static final class Rows implements TableVisitor {

        private final List<Finding> findings;
        private final MarketBuilder market;
        private final List<TableRow> rows = new ArrayList<>();

        Rows(List<Finding> findings) {
            this.findings = findings;
            this.market = new MarketBuilder(findings::add);
        }

        @Override
        public void startTable(Table table) {
            settle();
        }

        @Override
        public void row(TableRow row) {
            rows.add(row);
        }

        @Override
        public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
            settle();
        }

        void settle() {
            if (rows.isEmpty()) {
                return;
            }
            Table table = rows.get(0).table();
            MoneyReader money = new MoneyReader(table, rows, findings::add);
            OfferRows reader = new OfferRows(new KindReader(findings::add), money, findings::add);
            boolean onlyTerms = !table.has(Field.PRICE) && table.columns(Field.PRICE_FROM).isEmpty();
            for (TableRow row : rows) {
                Optional<Doubt> aside = RowKinds.aside(row);
                if (aside.isPresent()) {
                    findings.add(aside.get().at(row.place(), row.shown()));
                } else if (onlyTerms) {
                    terms(row, money);
                } else {
                    Optional<OfferLine> line = reader.read(row);
                    line.ifPresent(market::add);
                    line.ifPresent(known -> market.terms(known.supplier(), row, money));
                }
            }
            rows.clear();
        }

        private void terms(TableRow row, MoneyReader money) {
            String supplier = row.text(Field.SUPPLIER);
            if (supplier.isEmpty()) {
                findings.add(Doubt.error("offer-without-price",
                        "This table has neither prices nor suppliers' terms; the row was left out.",
                        "a column of prices", "Name the column of prices, or delete the table.")
                                .at(row.place(), row.shown()));
            } else {
                market.terms(supplier, row, money);
            }
        }
    }
}
