package slotledger.catalog.internal.file;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.board.BoardFact;
import slotledger.model.source.Ground;
import slotledger.model.source.Source;

/** Reads where facts are from. */
final class SourceReading {

    private static final List<String> KEYS = List.of("document", "page", "date", "ground");

    private SourceReading() {
    }

    /** "from memory", or lines with document, page and date. */
    static Optional<Source> source(Value value) {
        if (!value.isMapping() && !value.isList()) {
            Optional<Ground> ground = value.word(Words.GROUNDS);
            if (ground.isPresent() && ground.get() == Ground.DOCUMENT) {
                value.wrong("which document", "Write \"document:\" with its title, and page and date, on lines below.");
                return Optional.empty();
            }
            return ground.map(Source::of);
        }
        return value.fields(KEYS).flatMap(SourceReading::source);
    }

    private static Optional<Source> source(Fields fields) {
        Ground ground = fields.find("ground").flatMap(value -> value.word(Words.GROUNDS)).orElse(Ground.DOCUMENT);
        Optional<String> document = ground == Ground.DOCUMENT
                ? fields.require("document", "Board manual KB-410").flatMap(Value::text)
                : fields.find("document").flatMap(Value::text);
        String page = fields.find("page").flatMap(Value::text).orElse("");
        Optional<LocalDate> date = fields.find("date").flatMap(value -> value.parsed(SourceReading::date,
                "a date as year-month-day, such as 2016-03-01"));
        if (ground == Ground.DOCUMENT && document.isEmpty()) {
            return Optional.empty();
        }
        String place = page.matches("[0-9]+") ? "page " + page : page;
        return Optional.of(new Source(ground, document.orElse(""), place, date));
    }

    static Map<BoardFact, Source> sources(Value value) {
        Map<BoardFact, Source> sources = new EnumMap<>(BoardFact.class);
        value.fields(List.copyOf(Words.FACTS.keySet())).ifPresent(fields -> Words.FACTS.forEach((word, fact) ->
                fields.find(word).flatMap(SourceReading::source).ifPresent(source -> sources.put(fact, source))));
        return sources;
    }

    private static Optional<LocalDate> date(String text) {
        try {
            return Optional.of(LocalDate.parse(text));
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
