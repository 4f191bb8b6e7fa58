package slotledger.model.verdict;

/** What a reason means for a population, lightest first. */
public enum Weight {
    /** The rule was looked at and holds. */
    PASSES("passes"),
    /** Good to watch; works. */
    CAUTION("caution"),
    /** Works, but slower or smaller. */
    LOWERS("lowers"),
    /** A fact is missing, so that nobody can say. */
    UNKNOWN("unknown"),
    /** Not allowed. */
    BLOCKS("blocks");

    private final String text;

    Weight(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }

    public Weight worse(Weight other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
