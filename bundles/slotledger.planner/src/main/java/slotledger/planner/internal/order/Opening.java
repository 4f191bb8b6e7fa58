package slotledger.planner.internal.order;

import java.util.Objects;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Population;
import slotledger.model.machine.Whereabouts;

/**
 * A machine that is opened.
 *
 * @param tag     which machine
 * @param where   where it stands
 * @param centre  the cost centre whose budget limits it; empty where none does
 * @param before  what is in its slots now
 * @param changes the moves in its slots
 */
public record Opening(AssetTag tag, Whereabouts where, String centre, Population before, SlotChanges changes) {

    public Opening {
        Objects.requireNonNull(tag, "tag");
        Objects.requireNonNull(where, "where");
        Objects.requireNonNull(centre, "centre");
        Objects.requireNonNull(before, "before");
        Objects.requireNonNull(changes, "changes");
    }
}
