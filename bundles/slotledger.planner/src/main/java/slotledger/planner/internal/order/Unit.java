package slotledger.planner.internal.order;

import java.util.Objects;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/** One thing on its way; where it goes may become known only later. */
public final class Unit {

    private final SlotContent content;
    private final Station from;
    private Move move;
    private boolean taken;

    Unit(SlotContent content, Station from) {
        this.content = Objects.requireNonNull(content, "content");
        this.from = Objects.requireNonNull(from, "from");
    }

    public SlotContent content() {
        return content;
    }

    /** Says where it goes; only once. */
    public void goesTo(Station station) {
        if (move != null) {
            throw new IllegalStateException("The %s from %s must not go to two places.".formatted(content, from));
        }
        move = new Move(content, from, station);
    }

    /** Says that somebody takes it; false where somebody did already. */
    boolean take() {
        boolean first = !taken;
        taken = true;
        return first;
    }

    Move move() {
        return Objects.requireNonNull(move, "move");
    }
}
