package slotledger.model.project;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** What a person can correct in an inventory. */
public enum Fact {
    SERIAL,
    MAKER,
    MODEL,
    SITE,
    ROOM,
    COST_CENTRE,
    ROLE,
    OPERATING_SYSTEM,
    PROCESSOR;

    /** "cost-centre", as on the command line and in the journal. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /** "cost centre". */
    public String text() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    public static Optional<Fact> of(String id) {
        return Stream.of(values()).filter(fact -> fact.id().equals(id)).findFirst();
    }
}
