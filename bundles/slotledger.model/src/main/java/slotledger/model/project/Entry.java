package slotledger.model.project;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Objects;

/**
 * One line of the journal.
 *
 * @param number counted from 1 without gaps
 * @param made   when, to the millisecond
 * @param author who and why
 * @param change what
 * @param seal   SHA-256 over the seal of the entry before and all of this one, so that nothing is lost or changed
 *               unseen
 */
public record Entry(long number, Instant made, Author author, Change change, String seal) {

    public Entry {
        if (number < 1) {
            throw new IllegalArgumentException("The number (%d) of an entry must be at least 1.".formatted(number));
        }
        made = made.truncatedTo(ChronoUnit.MILLIS);
        Objects.requireNonNull(author, "author");
        Objects.requireNonNull(change, "change");
        Objects.requireNonNull(seal, "seal");
    }
}
