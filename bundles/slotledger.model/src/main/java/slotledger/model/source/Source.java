package slotledger.model.source;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;

/**
 * Where a fact comes from.
 *
 * @param ground   what it rests on
 * @param document title of the document, file or person; may be empty where the ground says it all
 * @param place    page, table or cell in it; may be empty
 * @param date     date of the document or of the reading
 */
public record Source(Ground ground, String document, String place, Optional<LocalDate> date) {

    public Source {
        Objects.requireNonNull(ground, "ground");
        Objects.requireNonNull(document, "document");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(date, "date");
        if (ground == Ground.DOCUMENT && document.isBlank()) {
            throw new IllegalArgumentException(
                    "The document of a source must have a title. Maybe the ground is another.");
        }
    }

    public static Source document(String document, String place) {
        return new Source(Ground.DOCUMENT, document, place, Optional.empty());
    }

    public static Source of(Ground ground) {
        return new Source(ground, "", "", Optional.empty());
    }

    /** One line for people: "Board manual KB-410, page 17 (2016-03-01)" or "from memory". */
    @Override
    public String toString() {
        StringBuilder line = new StringBuilder(document);
        if (!place.isBlank()) {
            line.append(line.isEmpty() ? "" : ", ").append(place);
        }
        date.ifPresent(day -> line.append(" (").append(day).append(')'));
        if (ground != Ground.DOCUMENT) {
            line.append(line.isEmpty() ? "" : ", ").append(ground.text());
        }
        return line.toString();
    }
}
