package slotledger.model.delivery;

import java.time.LocalDate;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.AssetTag;

/** What happened to the order of a plan. */
public sealed interface TradeEvent {

    /** Number of the plan whose order it is, counted from 1 within its project. */
    int plan();

    /** What it is about: two people who write down something about the same at once must talk to each other. */
    default String subject() {
        String order = "order of plan " + plan();
        if (this instanceof Sent sent) {
            return order + " sent to " + sent.supplier();
        }
        if (this instanceof Confirmed confirmed) {
            return order + " confirmed by " + confirmed.supplier();
        }
        if (this instanceof Received received) {
            return order + " received of " + received.offer();
        }
        return this instanceof Drawn drawn ? order + " drawn of " + drawn.offer() : order;
    }

    /**
     * Somebody answers for the money: the plan as it was kept is the order, whatever is planned later.
     *
     * @param by who approved; the author of the entry may only have written it down
     */
    record Approved(int plan, String by) implements TradeEvent {
        public Approved {
            by = by.strip();
            if (by.isEmpty()) {
                throw new IllegalArgumentException("An approval must say who approved.");
            }
        }
    }

    /** The order went out to a supplier. */
    record Sent(int plan, String supplier, LocalDate day) implements TradeEvent {
        public Sent {
            Objects.requireNonNull(supplier, "supplier");
            Objects.requireNonNull(day, "day");
        }
    }

    /**
     * A supplier confirmed the order.
     *
     * @param number   the supplier's number for it; may be empty
     * @param expected when the goods are to come; empty where the supplier didn't say
     */
    record Confirmed(int plan, String supplier, LocalDate day, String number, Optional<LocalDate> expected)
            implements TradeEvent {
        public Confirmed {
            Objects.requireNonNull(supplier, "supplier");
            Objects.requireNonNull(day, "day");
            number = number.strip();
            Objects.requireNonNull(expected, "expected");
        }
    }

    /**
     * A part of an order line arrived.
     *
     * @param offer  id of the offer
     * @param good   modules that are as ordered
     * @param wrong  modules that are not what was ordered
     * @param dead   modules that are dead on arrival
     * @param tested whether the good ones were tested
     * @param note   delivery note, test, damage; may be empty
     */
    record Received(int plan, LocalDate day, String offer, int good, int wrong, int dead, boolean tested, String note)
            implements TradeEvent {
        public Received {
            Objects.requireNonNull(day, "day");
            Objects.requireNonNull(offer, "offer");
            note = note.strip();
            if (good < 0 || wrong < 0 || dead < 0 || good + wrong + dead == 0) {
                throw new IllegalArgumentException(
                        "What was received must be counted, and no count (%d good, %d wrong, %d dead) be below 0."
                                .formatted(good, wrong, dead));
            }
        }
    }

    /**
     * A module that arrived was used beside the plan, such as a spare for one that failed.
     *
     * @param machine where it went; empty where it went elsewhere
     */
    record Drawn(int plan, LocalDate day, String offer, int modules, Optional<AssetTag> machine, String reason)
            implements TradeEvent {
        public Drawn {
            Objects.requireNonNull(day, "day");
            Objects.requireNonNull(offer, "offer");
            Objects.requireNonNull(machine, "machine");
            reason = reason.strip();
            if (modules < 1 || reason.isEmpty()) {
                throw new IllegalArgumentException(
                        "Spares that are drawn (%d) must be at least 1, and say why.".formatted(modules));
            }
        }
    }

    /** Nothing more will come; another plan says what is done with what is there. */
    record Ended(int plan) implements TradeEvent {
    }
}
