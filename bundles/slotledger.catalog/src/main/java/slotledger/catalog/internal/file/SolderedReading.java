package slotledger.catalog.internal.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.module.Buffering;
import slotledger.model.module.Form;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;

/** Reads what is soldered to a board. */
final class SolderedReading {

    /** Written where machines of one model have different amounts. */
    static final String VARIES = "varies";

    private static final List<String> KEYS = List.of(
            "capacity", "generation", "rate", "ranks", "chip-width", "chip-size", "ecc", "cas-latency", "voltage");
    private static final int MOST_RANKS = 16;
    private static final int MOST_LATENCY = 99;

    private SolderedReading() {
    }

    /** The kind; empty where the amount varies from machine to machine. */
    static Optional<ModuleKind> kind(Value value) {
        if (!value.isMapping()) {
            value.word(Map.of(VARIES, VARIES));
            return Optional.empty();
        }
        return value.fields(KEYS).flatMap(SolderedReading::kind);
    }

    private static Optional<ModuleKind> kind(Fields fields) {
        Optional<Capacity> capacity = fields.require("capacity", "4 GB")
                .flatMap(value -> value.parsed(Measures::capacity, Measures.CAPACITY));
        // Chips on the board have no register or buffer between them and the controller.
        return capacity.map(amount -> new ModuleKind(
                fields.require("generation", "DDR4").flatMap(value -> value.word(Words.GENERATIONS)),
                Optional.of(Form.SOLDERED),
                amount,
                number(fields, "ranks", MOST_RANKS),
                fields.find("chip-width").flatMap(value -> value.word(Words.CHIP_WIDTHS)),
                fields.find("chip-size").flatMap(value -> value.parsed(Measures::chipSize, Measures.CHIP_SIZE)),
                fields.find("ecc").flatMap(value -> value.word(Words.ERROR_CHECKS)),
                Optional.of(Buffering.UNBUFFERED),
                fields.find("rate").flatMap(value -> value.parsed(Measures::rate, Measures.RATE)),
                number(fields, "cas-latency", MOST_LATENCY),
                fields.find("voltage")
                        .map(value -> value.items().stream()
                                .flatMap(item -> item.parsed(Measures::voltage, Measures.VOLTAGE).stream())
                                .collect(Collectors.toSet()))
                        .orElse(Set.of())));
    }

    private static OptionalInt number(Fields fields, String name, int most) {
        return fields.find(name).map(value -> value.number(1, most)).orElse(OptionalInt.empty());
    }
}
