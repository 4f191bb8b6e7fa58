package slotledger.intake.internal.fleet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import slotledger.intake.internal.table.Column;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Facts;
import slotledger.intake.internal.value.ModuleReading;
import slotledger.intake.internal.value.Readings;
import slotledger.intake.internal.value.SlotReading;
import slotledger.intake.internal.value.Words;
import slotledger.model.finding.Finding;
import slotledger.model.unit.Capacity;

/**
 * What the cells say that speak of a machine's memory as a whole.
 *
 * @param total  total memory
 * @param slots  modules in words
 * @param column where the total stands
 * @param words  where the modules stand
 * @param common facts that hold for all modules
 */
record MemoryCell(
        Optional<Capacity> total, List<SlotReading> slots, Optional<Column> column, Optional<Column> words,
                Facts common) {

    static MemoryCell read(TableRow row, CellReader cells, Readings readings, Consumer<Finding> findings) {
        Facts common = new Facts();
        for (Field field : List.of(Field.MEMORY_TYPE, Field.MEMORY_RATE)) {
            Optional<Column> column = row.table().column(field);
            String text = row.text(field);
            if (column.isEmpty() || text.isEmpty() || Words.sayNothing(text)) {
                continue;
            }
            if (field == Field.MEMORY_RATE && text.matches("\\d{2,5}")) {
                common = common.and(Facts.ofRate(Integer.parseInt(text)));
                continue;
            }
            ModuleReading reading = readings.module(text, Optional.empty());
            if (!reading.rest().isEmpty()) {
                findings.accept(reading.restDoubt().at(row.place(column.get()), text));
            }
            common = common.and(reading.facts().withoutCapacity());
        }
        MemoryCell total = memory(row, cells, readings, findings, common);
        return modules(row, cells, readings, total);
    }

    private static MemoryCell memory(
            TableRow row, CellReader cells, Readings readings, Consumer<Finding> findings, Facts common) {
        Optional<Column> column = row.table().column(Field.MEMORY);
        String text = row.text(Field.MEMORY);
        MemoryCell nothing = new MemoryCell(Optional.empty(), List.of(), column, Optional.empty(), common);
        if (column.isEmpty() || text.isEmpty() || Words.sayNothing(text) || cells.isDate(row, column.get())) {
            return nothing;
        }
        cells.numberAsText(row, column.get());
        ModuleReading reading = readings.module(text, column.get().unit());
        List<SlotReading> slots = readings.all(text, column.get().unit());
        if (slots.size() > 1 || reading.counted() || slots.stream().anyMatch(slot -> slot.label().isPresent())) {
            return new MemoryCell(Optional.empty(), slots, column, column, common);
        }
        List<Doubt> doubts = new ArrayList<>(reading.doubts());
        if (reading.facts().capacity().isEmpty()) {
            doubts.add(Doubt.warning("total-not-understood", "The total memory was not understood.",
                    "a capacity such as 8 GB, or modules such as 2x4GB", "Write it again."));
        } else if (!reading.rest().isEmpty()) {
            doubts.add(reading.restDoubt());
        }
        doubts.forEach(doubt -> findings.accept(doubt.at(row.place(column.get()), text)));
        return new MemoryCell(reading.facts().capacity(), List.of(), column, Optional.empty(),
                common.or(reading.facts().withoutCapacity()));
    }

    private static MemoryCell modules(TableRow row, CellReader cells, Readings readings, MemoryCell known) {
        Optional<Column> column = row.table().column(Field.MODULES);
        String text = row.text(Field.MODULES);
        if (column.isEmpty() || text.isEmpty() || Words.UNKNOWN.says(text)) {
            return known;
        }
        if (cells.isDate(row, column.get())) {
            SlotReading unread = readings.one("? " + text, Optional.empty());
            return new MemoryCell(known.total, List.of(unread), known.column, column, known.common);
        }
        return new MemoryCell(known.total, readings.all(text, column.get().unit()), known.column, column, known.common);
    }
}
