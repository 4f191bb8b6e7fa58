package slotledger.catalog.internal.file;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.board.Processor;
import slotledger.model.board.RateLimit;
import slotledger.model.unit.Rate;

/** Reads printed limits of the rate, and processors with theirs. */
final class LimitReading {

    private static final List<String> RATE_KEYS =
            List.of("rate", "modules-per-channel", "ranks", "buffering", "voltage");
    private static final List<String> PROCESSOR_KEYS = List.of("name", "aliases", "rate", "largest-total");
    private static final int MOST = 16;

    private LimitReading() {
    }

    /** A number alone is a limit that always holds. */
    static Optional<RateLimit> rateLimit(Value value) {
        if (!value.isMapping()) {
            return value.parsed(Measures::rate, Measures.RATE).map(RateLimit::always);
        }
        return value.fields(RATE_KEYS).flatMap(LimitReading::rateLimit);
    }

    private static Optional<RateLimit> rateLimit(Fields fields) {
        Optional<Rate> rate =
                fields.require("rate", "2133").flatMap(value -> value.parsed(Measures::rate, Measures.RATE));
        return rate.map(fastest -> new RateLimit(
                number(fields, "modules-per-channel"),
                number(fields, "ranks"),
                fields.find("buffering").flatMap(value -> value.word(Words.BUFFERINGS)),
                fields.find("voltage").flatMap(value -> value.parsed(Measures::voltage, Measures.VOLTAGE)),
                fastest));
    }

    /** A text alone is a processor without limits of its own. */
    static Optional<Processor> processor(Value value) {
        if (!value.isMapping()) {
            return value.text().map(name -> new Processor(name, List.of(), Optional.empty(), Optional.empty()));
        }
        return value.fields(PROCESSOR_KEYS).flatMap(LimitReading::processor);
    }

    private static Optional<Processor> processor(Fields fields) {
        return fields.require("name", "Corvid 5 2400").flatMap(Value::text).map(name -> new Processor(
                name,
                fields.find("aliases").map(Value::texts).orElse(List.of()),
                fields.find("rate").flatMap(value -> value.parsed(Measures::rate, Measures.RATE)),
                fields.find("largest-total").flatMap(value -> value.parsed(Measures::capacity, Measures.CAPACITY))));
    }

    private static OptionalInt number(Fields fields, String name) {
        return fields.find(name).map(value -> value.number(1, MOST)).orElse(OptionalInt.empty());
    }
}
