package slotledger.planner.internal.choice;

import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.Population;

/**
 * What somebody decided for a machine.
 *
 * @param pinned what it holds after the work; empty where that is left to the search
 * @param room   the room that is kept uniform and in which it stands; mostly empty
 */
public record Decided(Optional<Population> pinned, Optional<String> room) {

    /** Nobody decided anything. */
    public static final Decided NOTHING = new Decided(Optional.empty(), Optional.empty());

    public Decided {
        Objects.requireNonNull(pinned, "pinned");
        Objects.requireNonNull(room, "room");
    }
}
