package slotledger.model.work;

import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.Objects;
import java.util.UUID;
import slotledger.model.machine.AssetTag;

/**
 * One thing that happened to a job.
 *
 * @param id      made where it happened, so that one that is sent twice counts once
 * @param machine whose job
 * @param plan    number of the plan the job belongs to, counted from 1 within its project
 * @param at      when it happened, to the millisecond, by the clock of the device it happened on
 * @param what    what happened
 */
public record JobEvent(UUID id, AssetTag machine, int plan, Instant at, What what) {

    private static final int LONGEST_TEXT = 1000;

    public JobEvent {
        Objects.requireNonNull(id, "id");
        Objects.requireNonNull(machine, "machine");
        at = at.truncatedTo(ChronoUnit.MILLIS);
        Objects.requireNonNull(what, "what");
        if (plan < 1) {
            throw new IllegalArgumentException("The plan (%d) of a job must be at least 1.".formatted(plan));
        }
    }

    /** What can happen to a job. */
    public sealed interface What {

        /**
         * The job came into another state.
         *
         * @param reason why, in the technician's words; may be empty except where the state needs one
         */
        record Became(JobState state, String reason) implements What {
            public Became {
                Objects.requireNonNull(state, "state");
                reason = words(reason);
                if (state.needsReason() && reason.isEmpty()) {
                    throw new IllegalArgumentException("A job that is %s must say why.".formatted(state.text()));
                }
            }
        }

        /**
         * A step of the job sheet was done, or found not done after all.
         *
         * @param step the step's number on the sheet, from 1
         * @param done false takes an earlier tick back
         */
        record Ticked(int step, boolean done) implements What {
            public Ticked {
                if (step < 1) {
                    throw new IllegalArgumentException("The step (%d) must be at least 1.".formatted(step));
                }
            }
        }

        /**
         * The serial number of the module that is now in a slot.
         *
         * @param serial as it was scanned or typed; empty takes an earlier one back
         */
        record SerialRead(String slot, String serial) implements What {
            public SerialRead {
                slot = words(slot);
                serial = words(serial);
            }
        }

        /**
         * Something is other than the sheet says.
         *
         * @param slot where; empty where it is about the whole machine
         * @param text what, in the technician's words
         */
        record Deviated(String slot, String text) implements What {
            public Deviated {
                slot = words(slot);
                text = words(text);
                if (text.isEmpty()) {
                    throw new IllegalArgumentException("A deviation must say what is other than planned.");
                }
            }
        }

        private static String words(String text) {
            String words = text.strip();
            if (words.length() > LONGEST_TEXT) {
                throw new IllegalArgumentException(
                        "What is said of a job must have at most %d characters.".formatted(LONGEST_TEXT));
            }
            return words;
        }
    }
}
