package slotledger.app;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.source.Source;

/**
 * What a module is easily taken for.
 *
 * @param one     what it is, with its article: "a DDR2 DIMM"
 * @param other   what it is taken for
 * @param happens what one sees of it where the other is wanted; empty where it does no harm
 * @param byEye   how to tell them apart by looking at them
 * @param byLabel how to tell them apart by their labels
 * @param source  who says so
 */
public record Mixup(
        String one, String other, Optional<String> happens, String byEye, String byLabel, Source source) {

    public Mixup {
        Objects.requireNonNull(one, "one");
        Objects.requireNonNull(other, "other");
        Objects.requireNonNull(happens, "happens");
        Objects.requireNonNull(byEye, "byEye");
        Objects.requireNonNull(byLabel, "byLabel");
        Objects.requireNonNull(source, "source");
    }
}
