package slotledger.intake.internal.value;

/** What stands before the fraction of a number. */
public enum DecimalMark {
    POINT,
    COMMA,
    /** Nothing shows which. */
    UNKNOWN
}
