package slotledger.catalog.internal.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.board.Binding;
import slotledger.model.board.Fill;
import slotledger.model.board.FillRow;

/** Reads which slots come first. */
final class FillReading {

    private static final List<String> KEYS =
            List.of("order", "table", "binding", "table-only", "sets-of", "largest-first");
    private static final List<String> ROW_KEYS = List.of("slots", "processors", "rate");
    private static final int MOST_IN_A_SET = 16;

    private final SlotReading slots;
    private final int processorSockets;

    FillReading(SlotReading slots, int processorSockets) {
        this.slots = slots;
        this.processorSockets = processorSockets;
    }

    /** A list is the order alone. */
    Optional<Fill> fill(Value value) {
        if (!value.isMapping()) {
            return Optional.of(new Fill(slots.labels(value), List.of(), Binding.RECOMMENDED, false, 1, false, false,
                    Optional.empty()));
        }
        return value.fields(KEYS).flatMap(this::fill);
    }

    private Optional<Fill> fill(Fields fields) {
        List<FillRow> table = new ArrayList<>();
        fields.find("table").ifPresent(value -> {
            if (value.isList()) {
                value.items().forEach(item -> row(item).ifPresent(table::add));
            } else {
                value.wrong("a list of rows, each with a hyphen", "Write one row a line: \"- [A1, B1]\".");
            }
        });
        boolean tableOnly = fields.find("table-only").flatMap(Value::flag).orElse(false);
        if (tableOnly && table.isEmpty()) {
            fields.find("table-only").get().problem("Only the fill table is allowed, but it has no rows.",
                    "Add the rows under \"table\", or delete this line.");
            return Optional.empty();
        }
        return Optional.of(new Fill(
                fields.find("order").map(slots::labels).orElse(List.of()),
                table,
                fields.find("binding").flatMap(value -> value.word(Words.BINDINGS)).orElse(Binding.RECOMMENDED),
                tableOnly,
                fields.find("sets-of").map(value -> value.number(1, MOST_IN_A_SET).orElse(1)).orElse(1),
                fields.find("largest-first").flatMap(Value::flag).orElse(false), false, Optional.empty()));
    }

    private Optional<FillRow> row(Value value) {
        if (!value.isMapping()) {
            return row(value, 1, Optional.empty());
        }
        Optional<Fields> fields = value.fields(ROW_KEYS);
        int processors = fields.flatMap(known -> known.find("processors"))
                .map(number -> number.number(1, processorSockets).orElse(1))
                .orElse(1);
        return fields.flatMap(known -> known.require("slots", "[A1, B1]"))
                .flatMap(labels -> row(labels, processors, fields.get().find("rate")));
    }

    private Optional<FillRow> row(Value labels, int processors, Optional<Value> rate) {
        List<String> filled = slots.labels(labels);
        if (filled.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new FillRow(processors, filled,
                rate.flatMap(value -> value.parsed(Measures::rate, Measures.RATE))));
    }
}
