package slotledger.catalog.internal.file;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;
import slotledger.model.board.EccOutcome;
import slotledger.model.board.Takes;
import slotledger.model.module.ChipSize;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.unit.Capacity;

/** Reads one allowed way of filling the slots. */
final class TakesReading {

    private static final List<String> KEYS = List.of(
            "generation", "form", "slots", "buffering", "ecc", "parity", "voltage", "rate", "smallest-module",
            "largest-module", "chip-width", "smallest-chip", "largest-chip", "module-ranks", "channel-ranks",
            "tallest-stack", "slowest-module", "contacts");
    private static final int MOST_RANKS = 64;
    private static final int MOST_STACK = 16;

    private TakesReading() {
    }

    static Optional<Takes> takes(Value value, SlotReading slots) {
        return value.fields(KEYS).flatMap(fields -> takes(fields, slots));
    }

    private static Optional<Takes> takes(Fields fields, SlotReading slots) {
        Optional<Generation> generation =
                fields.require("generation", "DDR4").flatMap(value -> value.word(Words.GENERATIONS));
        Set<Form> forms = fields.require("form", "DIMM").map(value -> words(value, Words.FORMS)).orElse(Set.of());
        if (generation.isEmpty() || forms.isEmpty()) {
            return Optional.empty();
        }
        return Optional.of(new Takes(
                fields.find("slots").map(slots::labels).<Set<String>>map(LinkedHashSet::new).orElse(Set.of()),
                generation.get(),
                forms,
                fields.find("buffering").map(value -> words(value, Words.BUFFERINGS)).orElse(Set.of()),
                errorCheck(fields),
                measures(fields, "voltage", Measures::voltage, Measures.VOLTAGE),
                measures(fields, "rate", Measures::rate, Measures.RATE),
                capacity(fields, "smallest-module"),
                capacity(fields, "largest-module"),
                fields.find("chip-width").map(value -> words(value, Words.CHIP_WIDTHS)).orElse(Set.of()),
                chip(fields, "smallest-chip"),
                chip(fields, "largest-chip"),
                number(fields, "module-ranks", MOST_RANKS),
                number(fields, "channel-ranks", MOST_RANKS),
                number(fields, "tallest-stack", MOST_STACK),
                fields.find("slowest-module")
                        .flatMap(value -> value.parsed(Measures::accessTime, Measures.ACCESS_TIME)),
                fields.find("contacts").flatMap(value -> value.word(Words.CONTACTS))));
    }

    /** Documents of SIMM boards speak of parity where later ones speak of ECC; what becomes of it is the same fact. */
    private static EccOutcome errorCheck(Fields fields) {
        Optional<Value> parity = fields.find("parity");
        if (parity.isPresent() && fields.find("ecc").isPresent()) {
            parity.get().problem("The fields \"parity\" and \"ecc\" say the same.", "Keep one of the two lines.");
            return EccOutcome.UNKNOWN;
        }
        return parity.or(() -> fields.find("ecc"))
                .flatMap(value -> value.word(Words.ECC_OUTCOMES))
                .orElse(EccOutcome.UNKNOWN);
    }

    private static <T> Set<T> words(Value value, Map<String, T> words) {
        Set<T> meant = new LinkedHashSet<>();
        value.items().forEach(item -> item.word(words).ifPresent(meant::add));
        return meant;
    }

    private static <T> Set<T> measures(
            Fields fields, String name, Function<String, Optional<T>> parser, String expected) {
        Set<T> read = new LinkedHashSet<>();
        fields.find(name).ifPresent(
                value -> value.items().forEach(item -> item.parsed(parser, expected).ifPresent(read::add)));
        return read;
    }

    private static Optional<Capacity> capacity(Fields fields, String name) {
        return fields.find(name).flatMap(value -> value.parsed(Measures::capacity, Measures.CAPACITY));
    }

    private static Optional<ChipSize> chip(Fields fields, String name) {
        return fields.find(name).flatMap(value -> value.parsed(Measures::chipSize, Measures.CHIP_SIZE));
    }

    private static OptionalInt number(Fields fields, String name, int most) {
        return fields.find(name).map(value -> value.number(1, most)).orElse(OptionalInt.empty());
    }
}
