package slotledger.solver;

/** A solver can't be used here, or finds no answer within its limits; the message says why and what to do. */
public final class SolverException extends Exception {

    private static final long serialVersionUID = 1L;

    public SolverException(String message) {
        super(message);
    }

    public SolverException(String message, Throwable cause) {
        super(message, cause);
    }
}
