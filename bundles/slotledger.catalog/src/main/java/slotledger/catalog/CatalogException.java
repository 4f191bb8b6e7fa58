package slotledger.catalog;

/** A catalog folder can't be read; the message says which and what to do. */
public final class CatalogException extends Exception {

    private static final long serialVersionUID = 1L;

    public CatalogException(String message, Throwable cause) {
        super(message, cause);
    }
}
