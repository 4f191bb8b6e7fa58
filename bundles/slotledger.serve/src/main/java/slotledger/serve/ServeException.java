package slotledger.serve;

/** A server can't start or go on; the message says why and what to do. */
public final class ServeException extends Exception {

    private static final long serialVersionUID = 1L;

    public ServeException(String message) {
        super(message);
    }

    public ServeException(String message, Throwable cause) {
        super(message, cause);
    }
}
