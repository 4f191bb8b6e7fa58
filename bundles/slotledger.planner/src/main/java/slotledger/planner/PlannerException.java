package slotledger.planner;

/** No plan can be made; the message says why and what to do. */
public final class PlannerException extends Exception {

    private static final long serialVersionUID = 1L;

    public PlannerException(String message) {
        super(message);
    }

    public PlannerException(String message, Throwable cause) {
        super(message, cause);
    }
}
