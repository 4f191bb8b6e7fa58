package slotledger.app;

/** A step can't be done; the message says which file or machine is concerned and what to do. */
public final class DeskException extends Exception {

    private static final long serialVersionUID = 1L;

    /** What kind of trouble it is; the command line gives each an exit code of its own. */
    public enum Trouble {
        /** A file is missing, unreadable or not what it should be. */
        INPUT,
        /** Files would be replaced and nobody said so. */
        EXISTS,
        /** A file can't be written. */
        OUTPUT,
        /** A team's database doesn't answer. */
        AWAY,
        /** A team's database doesn't let this user do it. */
        DENIED,
        /** No plan can be made. */
        PLAN
    }

    private final Trouble trouble;

    public DeskException(Trouble trouble, String message) {
        super(message);
        this.trouble = trouble;
    }

    public DeskException(Trouble trouble, String message, Throwable cause) {
        super(message, cause);
        this.trouble = trouble;
    }

    public Trouble trouble() {
        return trouble;
    }
}
