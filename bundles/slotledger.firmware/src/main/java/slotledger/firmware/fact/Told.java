package slotledger.firmware.fact;

import java.util.Optional;

/**
 * One fact as it was told.
 *
 * @param raw   the bytes as a number ("0x2000"), or the text as it stands there
 * @param value what it means; empty where the firmware says that it doesn't know, or says nothing that is understood
 */
public record Told<T>(Fact<T> fact, String raw, Optional<T> value) {

    /** For people: the value, or "unknown" with what stands there. */
    public String text() {
        return value.map(known -> known instanceof Coded coded ? coded.text() : known.toString())
                .orElse(raw.isBlank() ? "unknown" : "unknown (" + raw.strip() + ")");
    }
}
