package slotledger.model.observed;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What several sources can tell of a machine; who is believed can differ from one to the other. */
public enum Subject {
    SERIAL,
    MAKER,
    MODEL,
    PROCESSOR,
    /** Which modules are in which slots. */
    MEMORY;

    /** The word for people and in mapping files. */
    public String text() {
        return name().toLowerCase(Locale.ROOT);
    }

    public static Optional<Subject> of(String text) {
        return Stream.of(values()).filter(subject -> subject.text().equals(text)).findFirst();
    }
}
