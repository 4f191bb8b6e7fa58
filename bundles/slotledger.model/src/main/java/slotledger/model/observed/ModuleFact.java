package slotledger.model.observed;

/** What a text can tell of a module, in the order a person asks. */
public enum ModuleFact {
    CAPACITY("capacity", "capacities"),
    GENERATION("generation", "generations"),
    FORM("form", "forms"),
    BUFFERING("buffering", "kinds of buffering"),
    RATE("rate", "rates"),
    ACCESS_TIME("access time", "access times"),
    RANKS("ranks", "rank counts"),
    CHIP_WIDTH("chip width", "chip widths"),
    CHIP_SIZE("chip size", "chip sizes"),
    STACK("dies stacked in a chip", "stacks"),
    ERROR_CHECK("check bits", "statements about ECC"),
    CHECK_BITS("check bits beside each data word", "numbers of check bits"),
    CAS_LATENCY("CAS latency", "CAS latencies"),
    VOLTAGE("voltage", "voltages"),
    CONTACTS("contacts", "metals of contacts");

    private final String text;
    private final String plural;

    ModuleFact(String text, String plural) {
        this.text = text;
        this.plural = plural;
    }

    public String text() {
        return text;
    }

    public String plural() {
        return plural;
    }
}
