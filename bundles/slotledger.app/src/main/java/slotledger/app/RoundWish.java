package slotledger.app;

import java.time.Duration;
import java.util.List;
import java.util.OptionalInt;
import slotledger.model.work.Round;

/**
 * How rounds are to be made.
 *
 * @param plan         number of the plan; empty means the approved one, or else the last
 * @param technicians  at least one
 * @param windows      when work is possible; none means at any time
 * @param machines     most machines of one round, at least 1
 * @param perMachine   what one machine takes
 * @param betweenSites the way from one site to another
 */
public record RoundWish(
        OptionalInt plan,
        List<String> technicians,
        List<OpenTime> windows,
        int machines,
        Duration perMachine,
        Duration betweenSites) {

    public RoundWish {
        technicians = List.copyOf(technicians);
        windows = List.copyOf(windows);
        if (technicians.isEmpty() || machines < 1 || perMachine.isNegative() || perMachine.isZero()
                || betweenSites.isNegative()) {
            throw new IllegalArgumentException(
                    "Rounds need a technician, a machine at least in each, and a time for it above 0.");
        }
    }

    /**
     * When work is possible somewhere.
     *
     * @param place  a site, or "site / room"; empty means everywhere that has no times of its own
     * @param window from when until when
     */
    public record OpenTime(String place, Round.Window window) {
        public OpenTime {
            place = place.strip();
        }
    }
}
