package slotledger.model.module;

/** Extra bits a module carries to notice or mend errors. */
public enum ErrorCheck {
    NONE("non-ECC"),
    PARITY("parity"),
    ECC("ECC");

    private final String text;

    ErrorCheck(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
