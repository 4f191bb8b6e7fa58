package slotledger.planner.internal.choice;

/** Whether a board takes modules of a kind. */
public enum Fit {
    /** At least one population of this kind alone is allowed. */
    FITS,
    /** A fact is missing, so that nobody can say. */
    UNKNOWN,
    /** Every population of this kind alone breaks a rule. */
    BLOCKED
}
