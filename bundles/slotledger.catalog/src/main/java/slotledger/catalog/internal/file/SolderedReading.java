package slotledger.catalog.internal.file;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.BiFunction;
import slotledger.model.module.Buffering;
import slotledger.model.module.Form;
import slotledger.model.module.ModuleKind;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Voltage;

/** Reads what is soldered to a board. */
final class SolderedReading {

    /** Written where machines of one model have different amounts. */
    static final String VARIES = "varies";

    private static final List<String> KEYS = List.of(
            "capacity", "generation", "rate", "ranks", "chip-width", "chip-size", "stack", "ecc", "check-bits",
            "cas-latency", "access-time", "voltage");
    private static final int MOST_RANKS = 16;
    private static final int MOST_STACK = 16;
    private static final int MOST_CHECK_BITS = 16;
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
        return capacity.map(ModuleKind::ofCapacity).map(amount -> {
            ModuleKind kind = amount.with(Form.SOLDERED).with(Buffering.UNBUFFERED);
            kind = with(kind, fields.require("generation", "DDR4").flatMap(value -> value.word(Words.GENERATIONS)),
                    ModuleKind::with);
            kind = with(kind, number(fields, "ranks", MOST_RANKS), ModuleKind::withRanks);
            kind = with(kind, fields.find("chip-width").flatMap(value -> value.word(Words.CHIP_WIDTHS)),
                    ModuleKind::with);
            kind = with(kind, fields.find("chip-size")
                    .flatMap(value -> value.parsed(Measures::chipSize, Measures.CHIP_SIZE)), ModuleKind::with);
            kind = with(kind, number(fields, "stack", MOST_STACK), ModuleKind::withStack);
            kind = with(kind, fields.find("ecc").flatMap(value -> value.word(Words.ERROR_CHECKS)), ModuleKind::with);
            kind = with(kind, number(fields, "check-bits", MOST_CHECK_BITS), ModuleKind::withCheckBits);
            kind = with(kind, fields.find("access-time")
                    .flatMap(value -> value.parsed(Measures::accessTime, Measures.ACCESS_TIME)), ModuleKind::with);
            kind = with(kind, fields.find("rate").flatMap(value -> value.parsed(Measures::rate, Measures.RATE)),
                    ModuleKind::with);
            kind = with(kind, number(fields, "cas-latency", MOST_LATENCY), ModuleKind::withCasLatency);
            return kind.with(voltages(fields));
        });
    }

    private static Voltage[] voltages(Fields fields) {
        return fields.find("voltage").stream()
                .flatMap(value -> value.items().stream())
                .flatMap(item -> item.parsed(Measures::voltage, Measures.VOLTAGE).stream())
                .distinct()
                .toArray(Voltage[]::new);
    }

    private static <T> ModuleKind with(ModuleKind kind, Optional<T> fact, BiFunction<ModuleKind, T, ModuleKind> with) {
        return fact.map(known -> with.apply(kind, known)).orElse(kind);
    }

    private static Optional<Integer> number(Fields fields, String name, int most) {
        OptionalInt number = fields.find(name).map(value -> value.number(1, most)).orElse(OptionalInt.empty());
        return number.isPresent() ? Optional.of(number.getAsInt()) : Optional.empty();
    }
}
