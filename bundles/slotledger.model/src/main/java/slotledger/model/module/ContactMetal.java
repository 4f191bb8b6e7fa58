package slotledger.model.module;

/** The metal of contacts; that of a module and of its socket should be the same. */
public enum ContactMetal {
    GOLD("gold"),
    TIN("tin");

    private final String text;

    ContactMetal(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
