package slotledger.model.plan;

/** What a plan does for a machine. */
public enum Outcome {
    /** Reaches its target without being opened. */
    ON_TARGET("on target already"),
    /** Reaches its target by the plan. */
    REACHES_TARGET("reaches its target"),
    /** Opened, better than before, still below its target. */
    IMPROVED("better, but below its target"),
    /** Below its target and stays so. */
    NOT_HELPED("not helped"),
    /** Opened though it was on target, for its modules or by somebody's decision; stays on target. */
    DONOR("opened for others or by decision, stays on target"),
    /** The policy says to leave it alone. */
    LEFT_ALONE("left alone"),
    /** No target is set for its role. */
    NO_TARGET("no target");

    private final String text;

    Outcome(String text) {
        this.text = text;
    }

    public String text() {
        return text;
    }
}
