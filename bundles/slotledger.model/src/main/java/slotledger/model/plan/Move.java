package slotledger.model.plan;

import java.util.Objects;
import slotledger.model.machine.SlotContent;

/**
 * One module's way. A module that goes from one machine to another is one move, listed with both.
 *
 * @param content what is moved: a module, a filler or something unread
 * @param from    where it is before
 * @param to      where it is after
 */
public record Move(SlotContent content, Station from, Station to) {

    public Move {
        Objects.requireNonNull(content, "content");
        Objects.requireNonNull(from, "from");
        Objects.requireNonNull(to, "to");
        if (content.isEmpty() || from.equals(to)) {
            throw new IllegalArgumentException("A move must take something from one place to another.");
        }
    }
}
