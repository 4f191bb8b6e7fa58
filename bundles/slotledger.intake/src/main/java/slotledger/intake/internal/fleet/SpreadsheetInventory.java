package slotledger.intake.internal.fleet;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.intake.IntakeException;
import slotledger.intake.Reading;
import slotledger.intake.internal.sheet.SheetFile;
import slotledger.intake.internal.sheet.SheetFiles;
import slotledger.intake.internal.table.Headings;
import slotledger.intake.internal.table.Mapping;
import slotledger.intake.internal.table.TableFinder;
import slotledger.intake.spi.InventoryReader;
import slotledger.intake.spi.ReaderName;
import slotledger.model.finding.Finding;
import slotledger.model.observed.ObservedFleet;
import slotledger.model.task.Progress;

/** Reads inventories kept in spreadsheets and text tables. */
@Component
@ReaderName("spreadsheet inventory")
public final class SpreadsheetInventory implements InventoryReader {

    /** Headings that name fewer fields may be anything. */
    public static final int LEAST_FIELDS = 2;
    public static final String HEADINGS = "fleet-headings.txt";

    private final SheetFile sheets;

    @Activate
    public SpreadsheetInventory() {
        this(new SheetFiles());
    }

    public SpreadsheetInventory(SheetFile sheets) {
        this.sheets = sheets;
    }

    @Override
    public boolean canRead(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return name.matches(".*\\.(xlsx|xlsm|xls|csv|tsv|txt)");
    }

    @Override
    public Reading<ObservedFleet> read(Path file, Optional<Path> mapping, Progress progress) throws IntakeException {
        return read(file, mapping.isPresent() ? Mapping.read(mapping.get()) : Mapping.NONE, progress);
    }

    Reading<ObservedFleet> read(Path file, Mapping mapping, Progress progress) throws IntakeException {
        List<Finding> findings = new ArrayList<>();
        FleetTables tables = new FleetTables(findings::add);
        TableFinder finder = new TableFinder(String.valueOf(file.getFileName()),
                Headings.of(HEADINGS, mapping.meanings()), LEAST_FIELDS, tables, findings::add);
        sheets.read(file, finder, progress);
        finder.endFile("a table with headings such as asset tag, model and memory");
        return new Reading<>(new ObservedFleet(tables.machines(), findings), finder.uses(), findings);
    }
}
