package slotledger.store;

/** A project can't be read or changed; the message says which and what to do. */
public final class StoreException extends Exception {

    private static final long serialVersionUID = 1L;

    /** What kind of trouble it is. */
    public enum Trouble {
        /** There is no project, or what was named is none. */
        MISSING,
        /** Something is there already. */
        EXISTS,
        /** Another program has it open, and didn't let go. */
        IN_USE,
        /** Somebody else changed the same meanwhile. */
        CHANGED,
        /** Something is missing in it, or is other than it was written. */
        DAMAGED,
        /** A newer Slotledger wrote it. */
        NEWER,
        /** The database it is in doesn't answer. */
        AWAY,
        /** The database doesn't let this user do it. */
        DENIED,
        /** It can't be written. */
        UNWRITABLE,
        /** What is asked for can't be done with it, such as taking back what was taken back. */
        REFUSED
    }

    private final Trouble trouble;

    public StoreException(Trouble trouble, String message) {
        super(message);
        this.trouble = trouble;
    }

    public StoreException(Trouble trouble, String message, Throwable cause) {
        super(message, cause);
        this.trouble = trouble;
    }

    public Trouble trouble() {
        return trouble;
    }
}
