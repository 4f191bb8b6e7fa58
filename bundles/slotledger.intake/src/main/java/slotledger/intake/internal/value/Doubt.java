package slotledger.intake.internal.value;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.source.Place;

/** What is doubtful in a text, before it is known where the text stands. Components as in {@link Finding}. */
public record Doubt(Severity severity, String code, String message, String expected, String remedy) {

    public Doubt {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(code, "code");
        Objects.requireNonNull(message, "message");
        Objects.requireNonNull(expected, "expected");
        Objects.requireNonNull(remedy, "remedy");
    }

    public static Doubt error(String code, String message, String expected, String remedy) {
        return new Doubt(Severity.ERROR, code, message, expected, remedy);
    }

    public static Doubt warning(String code, String message, String expected, String remedy) {
        return new Doubt(Severity.WARNING, code, message, expected, remedy);
    }

    public static Doubt note(String code, String message, String expected, String remedy) {
        return new Doubt(Severity.NOTE, code, message, expected, remedy);
    }

    /** The finding this is at a place, with the text seen there. */
    public Finding at(Place place, String seen) {
        return new Finding(severity, code, place, Optional.empty(), seen, message, expected, remedy);
    }
}
