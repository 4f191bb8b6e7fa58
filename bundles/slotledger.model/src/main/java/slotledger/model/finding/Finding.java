package slotledger.model.finding;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.AssetTag;
import slotledger.model.source.Place;

/**
 * One statement about data or a machine.
 *
 * @param severity how much it matters
 * @param code     stable id of the check, lower-case words with hyphens ("duplicate-asset-tag")
 * @param place    where it was seen
 * @param machine  the machine concerned, where there is one
 * @param seen     the text that was seen; may be empty
 * @param message  one sentence: what is the matter
 * @param expected what was expected; may be empty
 * @param remedy   what to do
 */
public record Finding(
        Severity severity,
        String code,
        Place place,
        Optional<AssetTag> machine,
        String seen,
        String message,
        String expected,
        String remedy) {

    public Finding {
        Objects.requireNonNull(severity, "severity");
        Objects.requireNonNull(place, "place");
        Objects.requireNonNull(machine, "machine");
        Objects.requireNonNull(seen, "seen");
        Objects.requireNonNull(expected, "expected");
        if (!code.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new IllegalArgumentException("The code (%s) must be lower-case words with hyphens.".formatted(code));
        }
        if (message.isBlank() || remedy.isBlank()) {
            throw new IllegalArgumentException(
                    "The finding %s must say what is the matter and what to do.".formatted(code));
        }
    }

    /** The same finding about a machine. */
    public Finding about(AssetTag tag) {
        return new Finding(severity, code, place, Optional.of(tag), seen, message, expected, remedy);
    }

    /** "error: fleet.xlsx, sheet PCs, row 14, column F (RAM): ... Expected ... ..." */
    @Override
    public String toString() {
        StringBuilder line = new StringBuilder(severity.text()).append(": ");
        if (!place.equals(Place.NOWHERE)) {
            line.append(place).append(": ");
        }
        line.append(message);
        if (!seen.isEmpty()) {
            line.append(" Seen: \"").append(seen).append("\".");
        }
        if (!expected.isEmpty()) {
            line.append(" Expected: ").append(expected).append('.');
        }
        return line.append(' ').append(remedy).toString();
    }
}
