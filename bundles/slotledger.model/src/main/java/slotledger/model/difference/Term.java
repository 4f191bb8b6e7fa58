package slotledger.model.difference;

import java.util.Objects;

/**
 * Something that was wanted, allowed or decided differently.
 *
 * @param what   what is spoken of
 * @param before what held for the earlier plan, a short text; "none" where nothing did
 * @param after  what held for the later one
 */
public record Term(String what, String before, String after) {
    public Term {
        Objects.requireNonNull(what, "what");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(after, "after");
    }
}
