package slotledger.intake.internal.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import slotledger.intake.internal.sheet.CellRange;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.table.TableVisitor;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.finding.Finding;
import slotledger.model.observed.ObservedMachine;

/** Collects the machines of one file. */
final class FleetTables implements TableVisitor {

    private final Consumer<Finding> findings;
    private final List<ObservedMachine> machines = new ArrayList<>();
    private final List<Table> tables = new ArrayList<>();
    private int firstOfSheet;
    private MachineRow reader;

    FleetTables(Consumer<Finding> findings) {
        this.findings = findings;
    }

    @Override
    public void startTable(Table table) {
        tables.add(table);
        reader = new MachineRow(table, findings);
        if (!table.has(Field.ASSET_TAG)) {
            String stand = table.has(Field.SERIAL) ? "serial number" : "computer name";
            findings.accept(table.has(Field.SERIAL) || table.has(Field.COMPUTER_NAME)
                    ? Doubt.warning("no-asset-tag-column", "This table has no column of asset tags; the %s stands in."
                            .formatted(stand), "a column of asset tags",
                                    "Add the column, or name it in a mapping file.")
                            .at(table.headerPlace(), "")
                    : Doubt.error("no-asset-tag-column",
                            "This table has a column neither of asset tags nor of serial numbers.",
                                    "a column of asset tags",
                            "Add the column, or name it in a mapping file.").at(table.headerPlace(), ""));
        }
        if (!table.has(Field.MODEL)) {
            findings.accept(Doubt.warning("no-model-column",
                    "This table has no column of models, so no board can be found.",
                    "a column of models", "Add the column, or name it in a mapping file.").at(table.headerPlace(), ""));
        }
    }

    @Override
    public void row(TableRow row) {
        Optional<ObservedMachine> machine = reader.read(row);
        machine.ifPresent(machines::add);
    }

    @Override
    public void endSheet(List<CellRange> merged, Set<Integer> hiddenColumns) {
        MergedCells cells = new MergedCells(tables, machines.subList(firstOfSheet, machines.size()), findings);
        merged.forEach(cells::fill);
        firstOfSheet = machines.size();
        tables.clear();
    }

    List<ObservedMachine> machines() {
        return machines;
    }
}
