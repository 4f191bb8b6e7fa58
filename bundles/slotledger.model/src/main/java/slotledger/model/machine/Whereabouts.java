package slotledger.model.machine;

import java.util.Comparator;
import java.util.Objects;

/**
 * Where a machine stands. An empty text means unknown.
 *
 * @param site campus or building
 * @param room room in it
 */
public record Whereabouts(String site, String room) implements Comparable<Whereabouts> {

    private static final Comparator<Whereabouts> ORDER =
            Comparator.comparing(Whereabouts::site).thenComparing(Whereabouts::room);

    public Whereabouts {
        Objects.requireNonNull(site, "site");
        Objects.requireNonNull(room, "room");
    }

    @Override
    public int compareTo(Whereabouts other) {
        return ORDER.compare(this, other);
    }

    @Override
    public String toString() {
        String shown = (site + " / " + room).trim();
        return site.isEmpty() ? room : room.isEmpty() ? site : shown;
    }
}
