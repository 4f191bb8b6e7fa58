package slotledger.export;

/** A file can't be written or read back; the message says which and what to do. */
public final class ExportException extends Exception {

    private static final long serialVersionUID = 1L;

    public ExportException(String message) {
        super(message);
    }

    public ExportException(String message, Throwable cause) {
        super(message, cause);
    }
}
