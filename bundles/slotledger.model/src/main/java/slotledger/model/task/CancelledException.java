package slotledger.model.task;

/** The user stopped the work; nothing was written. */
public final class CancelledException extends RuntimeException {

    private static final long serialVersionUID = 1L;

    public CancelledException() {
        super("stopped on request");
    }
}
