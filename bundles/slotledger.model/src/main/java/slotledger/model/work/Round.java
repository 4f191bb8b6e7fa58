package slotledger.model.work;

import java.time.LocalDateTime;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.AssetTag;

/**
 * One technician's list of machines in walking order.
 *
 * @param id         short and stable, for paper and for addresses: letters, digits and hyphens
 * @param plan       number of the plan it belongs to, counted from 1 within its project
 * @param technician who walks it; empty where nobody is named yet
 * @param site       may be empty
 * @param room       empty where the round goes through several
 * @param window     when it may be walked; empty where any time is right
 * @param machines   in the order of work, donors before receivers
 */
public record Round(
        String id,
        int plan,
        String technician,
        String site,
        String room,
        Optional<Window> window,
        List<AssetTag> machines) {

    public Round {
        if (!id.matches("[A-Za-z0-9][A-Za-z0-9-]{0,39}")) {
            throw new IllegalArgumentException(
                    "The id (%s) of a round must be 1 to 40 letters, digits and hyphens.".formatted(id));
        }
        if (plan < 1) {
            throw new IllegalArgumentException("The plan (%d) of a round must be at least 1.".formatted(plan));
        }
        technician = technician.strip();
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(room, "room");
        Objects.requireNonNull(window, "window");
        machines = List.copyOf(machines);
        if (machines.isEmpty() || machines.stream().distinct().count() < machines.size()) {
            throw new IllegalArgumentException("Round %s must name machines, each once.".formatted(id));
        }
    }

    /**
     * A stretch of time by the clock on the wall of the site.
     *
     * @param until after from
     */
    public record Window(LocalDateTime from, LocalDateTime until) {
        public Window {
            if (!until.isAfter(from)) {
                throw new IllegalArgumentException(
                        "The end (%s) of a window must be after its beginning (%s).".formatted(until, from));
            }
        }
    }
}
