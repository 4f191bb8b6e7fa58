package slotledger.intake.internal.value;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds what somebody may have meant. */
public final class Nearest {

    private Nearest() {
    }

    /** The name most like the one written; empty where none is alike in at least half of its letters. */
    public static Optional<String> to(String written, Collection<String> names) {
        String key = Texts.key(written);
        return names.stream()
                .min(Comparator.comparingInt((String name) -> Texts.distance(key, Texts.key(name)))
                        .thenComparing(Comparator.naturalOrder()))
                .filter(name -> Texts.distance(key, Texts.key(name)) * 2 <= Math.max(2, Texts.key(name).length()));
    }
}
