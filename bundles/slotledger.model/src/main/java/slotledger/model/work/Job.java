package slotledger.model.work;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import slotledger.model.machine.AssetTag;

/**
 * The work on one machine as far as it has come.
 *
 * @param machine    whose job
 * @param plan       number of the plan it belongs to
 * @param state      where it stands
 * @param reason     why it stands there; may be empty
 * @param ticked     numbers of the steps that are done
 * @param serials    slot to the serial number that was read there
 * @param deviations what is other than planned, in the order it was said
 * @param last       when something happened last; empty where nothing has
 */
public record Job(
        AssetTag machine,
        int plan,
        JobState state,
        String reason,
        Set<Integer> ticked,
        Map<String, String> serials,
        List<JobEvent.What.Deviated> deviations,
        Optional<Instant> last) {

    public Job {
        Objects.requireNonNull(machine, "machine");
        Objects.requireNonNull(state, "state");
        Objects.requireNonNull(reason, "reason");
        ticked = Collections.unmodifiableSet(new TreeSet<>(ticked));
        serials = Collections.unmodifiableMap(new LinkedHashMap<>(serials));
        deviations = List.copyOf(deviations);
        Objects.requireNonNull(last, "last");
    }

    /** A job nobody has begun. */
    public static Job planned(AssetTag machine, int plan) {
        return new Job(machine, plan, JobState.PLANNED, "", Set.of(), Map.of(), List.of(), Optional.empty());
    }

    /**
     * The job after something happened. What was recorded last holds, whatever the clocks of the devices say.
     *
     * @throws IllegalArgumentException where the event is about another job
     */
    public Job after(JobEvent event) {
        if (!event.machine().equals(machine) || event.plan() != plan) {
            throw new IllegalArgumentException("The event of %s in plan %d must be about %s in plan %d."
                    .formatted(event.machine(), event.plan(), machine, plan));
        }
        JobState next = state;
        String why = reason;
        Set<Integer> steps = new TreeSet<>(ticked);
        Map<String, String> read = new LinkedHashMap<>(serials);
        List<JobEvent.What.Deviated> said = new ArrayList<>(deviations);
        if (event.what() instanceof JobEvent.What.Became became) {
            next = became.state();
            why = became.reason();
        } else if (event.what() instanceof JobEvent.What.Ticked tick) {
            if (tick.done()) {
                steps.add(tick.step());
            } else {
                steps.remove(tick.step());
            }
        } else if (event.what() instanceof JobEvent.What.SerialRead serial) {
            if (serial.serial().isEmpty()) {
                read.remove(serial.slot());
            } else {
                read.put(serial.slot(), serial.serial());
            }
        } else if (event.what() instanceof JobEvent.What.Deviated deviated) {
            said.add(deviated);
        }
        return new Job(machine, plan, next, why, steps, read, said, Optional.of(event.at()));
    }
}
