package slotledger.model.delivery;

import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What happened to the orders of a project.
 *
 * @param happened in the order it was written down
 */
public record TradeState(List<Happened> happened) {

    public static final TradeState NONE = new TradeState(List.of());

    public TradeState {
        happened = List.copyOf(happened);
    }

    /**
     * One event of the journal.
     *
     * @param entry number of its entry
     * @param made  when it was written down
     * @param who   who wrote it down
     * @param event what happened
     */
    public record Happened(long entry, Instant made, String who, TradeEvent event) {
        public Happened {
            Objects.requireNonNull(made, "made");
            Objects.requireNonNull(who, "who");
            Objects.requireNonNull(event, "event");
        }
    }

    /** What happened to the order of one plan. */
    public List<Happened> of(int plan) {
        return happened.stream().filter(each -> each.event().plan() == plan).toList();
    }

    /** The last approval of a plan's order. */
    public Optional<Happened> approval(int plan) {
        return of(plan).stream().filter(each -> each.event() instanceof TradeEvent.Approved)
                .reduce((one, other) -> other);
    }

    public boolean isEnded(int plan) {
        return of(plan).stream().anyMatch(each -> each.event() instanceof TradeEvent.Ended);
    }
}
