package slotledger.intake.internal.fleet;

import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slotledger.intake.internal.sheet.CellRange;
import slotledger.intake.internal.table.Column;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.finding.Finding;
import slotledger.model.machine.Whereabouts;
import slotledger.model.observed.ObservedMachine;

/** Gives the machines below the value of a cell that is merged over several rows, such as one room for ten machines. */
final class MergedCells {

    private final List<Table> tables;
    private final List<ObservedMachine> machines;
    private final Consumer<Finding> findings;

    MergedCells(List<Table> tables, List<ObservedMachine> machines, Consumer<Finding> findings) {
        this.tables = List.copyOf(tables);
        this.machines = machines;
        this.findings = findings;
    }

    void fill(CellRange range) {
        int first = index(range.firstRow());
        if (range.lastRow() == range.firstRow() || first < 0) {
            return;
        }
        for (int column = range.firstColumn(); column <= range.lastColumn(); column++) {
            Optional<Column> known = column(column, range.firstRow());
            Optional<Field> field = known.flatMap(Column::meaning).map(meaning -> meaning.field());
            if (field.isPresent() && !value(machines.get(first), field.get()).isEmpty()) {
                fill(range, first, field.get(), known.get());
            }
        }
    }

    private Optional<Column> column(int number, int row) {
        return tables.stream().filter(table -> table.headerRow() < row).reduce((one, later) -> later)
                .flatMap(table -> table.columns().stream().filter(column -> column.number() == number).findFirst());
    }

    private void fill(CellRange range, int first, Field field, Column column) {
        String value = value(machines.get(first), field);
        int filled = 0;
        for (int i = first + 1; i < machines.size() && row(machines.get(i)) <= range.lastRow(); i++) {
            if (value(machines.get(i), field).isEmpty()) {
                machines.set(i, with(machines.get(i), field, value));
                filled++;
            }
        }
        if (filled > 0) {
            findings.accept(Doubt.note("merged-cell",
                    "This cell is merged over rows %d to %d; its value was used for all of them."
                    .formatted(range.firstRow(), range.lastRow()), "", "Nothing, if that is meant.")
                    .at(machines.get(first).place().atColumn(column.number(), column.heading()), value));
        }
    }

    private int index(int row) {
        int low = 0;
        int high = machines.size() - 1;
        while (low <= high) {
            int middle = (low + high) >>> 1;
            int found = row(machines.get(middle));
            if (found == row) {
                return middle;
            }
            low = found < row ? middle + 1 : low;
            high = found < row ? high : middle - 1;
        }
        return -1;
    }

    private static int row(ObservedMachine machine) {
        return machine.place().row().orElse(0);
    }

    private static String value(ObservedMachine machine, Field field) {
        return switch (field) {
            case MAKER -> machine.maker();
            case MODEL -> machine.model();
            case SITE -> machine.where().site();
            case ROOM -> machine.where().room();
            case COST_CENTRE -> machine.costCentre();
            case ROLE -> machine.role();
            case OPERATING_SYSTEM -> machine.operatingSystem();
            case PROCESSOR -> machine.processor();
            default -> "";
        };
    }

    private static ObservedMachine with(ObservedMachine old, Field field, String value) {
        Whereabouts where = switch (field) {
            case SITE -> new Whereabouts(value, old.where().room());
            case ROOM -> new Whereabouts(old.where().site(), value);
            default -> old.where();
        };
        return new ObservedMachine(old.tag(), old.serial(), field == Field.MAKER ? value : old.maker(),
                field == Field.MODEL ? value : old.model(), where,
                field == Field.COST_CENTRE ? value : old.costCentre(), field == Field.ROLE ? value : old.role(),
                field == Field.OPERATING_SYSTEM ? value : old.operatingSystem(),
                field == Field.PROCESSOR ? value : old.processor(), old.processors(), old.redundancy(),
                old.slotCount(), old.total(),
                old.slots(), old.place());
    }
}
