package slotledger.catalog.internal.file;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.Binding;
import slotledger.model.board.Fill;
import slotledger.model.board.FillRow;
import slotledger.model.board.Takes;
import slotledger.model.module.Filler;

/** Reads which slots come first. */
final class FillReading {

    private static final List<String> KEYS =
            List.of("order", "table", "binding", "table-only", "sets-of", "largest-first", "ranks-first",
                    "empty-sockets");
    private static final List<String> ROW_KEYS = List.of("slots", "processors", "rate");
    private static final int MOST_IN_A_SET = 16;
    static final Map<String, Held> EMPTY_SOCKETS =
            Map.of("continuity module", Held.CONTINUITY, "airflow blank", Held.AIR_BLANK, "nothing", Held.NOTHING);

    /** What an empty socket holds; which continuity module, its form decides. */
    enum Held {
        CONTINUITY,
        AIR_BLANK,
        NOTHING
    }

    private final SlotReading slots;
    private final int processorSockets;
    private final Optional<Filler> continuity;

    FillReading(SlotReading slots, int processorSockets, List<Takes> takes) {
        this.slots = slots;
        this.processorSockets = processorSockets;
        this.continuity = FormLaw.continuity(takes);
    }

    /** What holds where a file says nothing of filling. */
    Fill silent() {
        return order(List.of());
    }

    private Fill order(List<String> order) {
        return new Fill(order, List.of(), Binding.RECOMMENDED, false, 1, false, false, continuity);
    }

    /** A list is the order alone. */
    Optional<Fill> fill(Value value) {
        if (!value.isMapping()) {
            return Optional.of(order(slots.labels(value)));
        }
        return value.fields(KEYS).flatMap(this::fill);
    }

    private Optional<Filler> blank(Fields fields) {
        Optional<Value> stated = fields.find("empty-sockets");
        if (stated.isEmpty()) {
            return continuity;
        }
        return stated.get().word(EMPTY_SOCKETS).flatMap(held -> switch (held) {
            case CONTINUITY -> {
                if (continuity.isEmpty()) {
                    stated.get().problem("Only RIMM sockets of one form take continuity modules.",
                            "Write \"airflow blank\", or delete this line.");
                }
                yield continuity;
            }
            case AIR_BLANK -> Optional.of(Filler.AIR_BLANK);
            case NOTHING -> Optional.empty();
        });
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
                fields.find("largest-first").flatMap(Value::flag).orElse(false),
                fields.find("ranks-first").flatMap(Value::flag).orElse(false),
                blank(fields)));
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
