package slotledger.model.work;

import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;

/** Where the work on one machine stands. */
public enum JobState {
    /** Nobody has begun. */
    PLANNED("planned"),
    /** What goes into it lies in its bag. */
    BAGGED("bagged"),
    /** Somebody has opened it. */
    IN_WORK("in work"),
    /** Every slot holds what was planned, says the technician. */
    DONE("done"),
    /** Finished, but not as planned; the deviations say how. */
    DONE_DIFFERENTLY("done differently"),
    /** It could not be done; the reason says why. What is in the machine now isn't known. */
    FAILED("failed"),
    /** It holds again what it held before. */
    PUT_BACK("put back");

    private final String text;

    JobState(String text) {
        this.text = text;
    }

    /** "in work". */
    public String text() {
        return text;
    }

    /** "in-work", as in files and on the command line. */
    public String id() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    public static Optional<JobState> of(String id) {
        return Stream.of(values()).filter(state -> state.id().equals(id)).findFirst();
    }

    /** Whether nobody works on it any more. */
    public boolean isEnded() {
        return this == DONE || this == DONE_DIFFERENTLY || this == FAILED || this == PUT_BACK;
    }

    /** Whether a job can't get here without words that say why. */
    public boolean needsReason() {
        return this == FAILED || this == PUT_BACK;
    }
}
