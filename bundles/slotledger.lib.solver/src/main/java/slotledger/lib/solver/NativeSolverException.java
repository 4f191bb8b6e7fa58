package slotledger.lib.solver;

/** The solver's native code can't be used here; the message says why and what to do. */
public final class NativeSolverException extends Exception {

    public NativeSolverException(String message, Throwable cause) {
        super(message, cause);
    }
}
