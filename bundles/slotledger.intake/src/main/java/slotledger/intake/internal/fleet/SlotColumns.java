package slotledger.intake.internal.fleet;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import slotledger.intake.internal.sheet.Cell;
import slotledger.intake.internal.table.Column;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.Doubt;
import slotledger.intake.internal.value.Facts;
import slotledger.intake.internal.value.ModuleReading;
import slotledger.intake.internal.value.ModuleText;
import slotledger.intake.internal.value.SlotReading;
import slotledger.intake.internal.value.SlotText;
import slotledger.intake.internal.value.Texts;
import slotledger.intake.internal.value.Words;
import slotledger.model.finding.Finding;
import slotledger.model.observed.ObservedSlot;

/** The columns that speak of single slots: one column a slot, or several for size, type, rate, part and serial. */
final class SlotColumns {

    private final Map<String, Map<Field, Column>> slots = new LinkedHashMap<>();
    private final CellReader cells;
    private final SlotContents contents;
    private final Consumer<Finding> findings;
    private boolean blanksReported;

    SlotColumns(Table table, CellReader cells, SlotContents contents, Consumer<Finding> findings) {
        this.cells = cells;
        this.contents = contents;
        this.findings = findings;
        for (Column column : table.columns()) {
            column.meaning().filter(meaning -> !meaning.label().isEmpty() && isSlot(meaning.field()))
                    .ifPresent(meaning ->
                    slots.computeIfAbsent(meaning.label(), label -> new EnumMap<>(Field.class))
                            .putIfAbsent(meaning.field(), column));
        }
    }

    private static boolean isSlot(Field field) {
        return switch (field) {
            case SLOT, SLOT_SIZE, SLOT_TYPE, SLOT_RATE, SLOT_PART, SLOT_SERIAL, SLOT_MAKER -> true;
            default -> false;
        };
    }

    boolean isEmpty() {
        return slots.isEmpty();
    }

    /** Whether the row says anything in these columns. */
    boolean speak(TableRow row) {
        return slots.values().stream().anyMatch(columns -> speaks(row, columns));
    }

    private static boolean speaks(TableRow row, Map<Field, Column> columns) {
        return columns.values().stream().anyMatch(column -> row.cell(column).isPresent());
    }

    /**
     * What the row says of each slot. An empty cell beside filled ones is an empty slot, unless the machine has fewer
     * slots than the sheet has columns.
     *
     * @param slotCount how many slots the row says there are
     * @param common    facts that hold for all modules of the machine
     */
    List<ObservedSlot> read(TableRow row, Optional<Integer> slotCount, Facts common) {
        List<ObservedSlot> observed = new ArrayList<>();
        if (!speak(row)) {
            return observed;
        }
        int index = 0;
        for (Map.Entry<String, Map<Field, Column>> slot : slots.entrySet()) {
            index++;
            if (speaks(row, slot.getValue())) {
                observed.add(read(row, slot.getKey(), slot.getValue(), common));
            } else if (slotCount.isEmpty() || index <= slotCount.get()) {
                Column column = slot.getValue().values().iterator().next();
                reportBlank(row, column, slotCount);
                observed.add(contents.observe(Optional.of(slot.getKey()), SlotText.one("", Optional.empty()), "",
                        row.place(column)));
            }
        }
        return observed;
    }

    private void reportBlank(TableRow row, Column column, Optional<Integer> slotCount) {
        if (slotCount.isEmpty() && !blanksReported) {
            blanksReported = true;
            findings.accept(Doubt.note("blank-slot",
                    "From here on, a blank slot cell beside filled ones was taken for an empty slot.",
                    "a module, or empty", "Write empty, or add a column with the number of slots.")
                    .at(row.place(column), ""));
        }
    }

    private ObservedSlot read(TableRow row, String label, Map<Field, Column> columns, Facts common) {
        Column place = columns.getOrDefault(Field.SLOT, columns.getOrDefault(Field.SLOT_SIZE,
                columns.values().iterator().next()));
        for (Field field : List.of(Field.SLOT, Field.SLOT_SIZE)) {
            Column column = columns.get(field);
            if (column != null && cells.isDate(row, column)) {
                return contents.unread(Optional.of(label), row.text(column), row.place(column));
            }
        }
        Optional<Cell> failed = row.cell(place).filter(cell -> cell.type() == Cell.Type.ERROR);
        if (failed.isPresent()) {
            return contents.unread(Optional.of(label), failed.get().text(), row.place(place));
        }
        SlotReading reading = main(row, columns);
        Facts facts = reading.facts();
        for (Field field : List.of(Field.SLOT_TYPE, Field.SLOT_RATE)) {
            Column column = columns.get(field);
            String text = column == null ? "" : row.text(column);
            if (!text.isEmpty() && !Words.sayNothing(text) && !Words.sayEmpty(text)) {
                facts = facts.and(aspect(field, text, row, column));
            }
        }
        String part = text(row, columns.get(Field.SLOT_PART));
        SlotReading whole = new SlotReading(reading.label(), reading.state(), facts.or(common), reading.filler(),
                part.isEmpty() ? reading.part() : part, reading.text(), reading.doubts());
        return contents.observe(Optional.of(label), whole, text(row, columns.get(Field.SLOT_SERIAL)), row.place(place));
    }

    private SlotReading main(TableRow row, Map<Field, Column> columns) {
        StringBuilder text = new StringBuilder();
        Column unit = null;
        for (Field field : List.of(Field.SLOT, Field.SLOT_SIZE)) {
            Column column = columns.get(field);
            if (column != null && !row.text(column).isEmpty()) {
                text.append(text.isEmpty() ? "" : " ").append(row.text(column));
                unit = column;
                cells.numberAsText(row, column);
            }
        }
        if (unit == null) {
            for (Field field : List.of(Field.SLOT_TYPE, Field.SLOT_PART)) {
                Column column = columns.get(field);
                if (column != null && !row.text(column).isEmpty()) {
                    return contents.one(row.text(column), Optional.empty());
                }
            }
            return contents.one("?", Optional.empty());
        }
        return contents.one(text.toString(), unit.unit());
    }

    private Facts aspect(Field field, String text, TableRow row, Column column) {
        if (field == Field.SLOT_RATE && text.matches("\\d{2,5}")) {
            return Facts.ofRate(Integer.parseInt(text));
        }
        ModuleReading reading = ModuleText.read(text, Optional.empty());
        if (!reading.rest().isEmpty()) {
            findings.accept(reading.restDoubt().at(row.place(column), text));
        }
        return reading.facts();
    }

    private static String text(TableRow row, Column column) {
        String text = column == null ? "" : row.text(column);
        return Words.sayNothing(text) || Words.sayEmpty(text) ? "" : Texts.tidy(text);
    }
}
