package slotledger.export.internal.job;

import java.util.Locale;

/** What happens to a slot; told by a word, a symbol and a border, never by colour alone. */
public enum Mark {
    PUT_IN("+", "put in"),
    TAKE_OUT("\u00D7", "take out"),
    MOVES("\u2192", "moves"),
    MOVED("\u2192", "moved in"),
    STAYS("=", "stays"),
    EMPTY("", "empty"),
    SOLDERED("=", "soldered"),
    DEAD("\u00D7", "do not use");

    private final String symbol;
    private final String word;

    Mark(String symbol, String word) {
        this.symbol = symbol;
        this.word = word;
    }

    public String symbol() {
        return symbol;
    }

    public String word() {
        return word;
    }

    /** "+ put in". */
    public String text() {
        return (symbol + " " + word).strip();
    }

    /** Lower-case name with hyphens. */
    public String key() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
