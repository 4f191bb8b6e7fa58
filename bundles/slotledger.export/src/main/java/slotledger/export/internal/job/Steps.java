package slotledger.export.internal.job;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slotledger.export.PlanBook;
import slotledger.export.internal.round.Partners;
import slotledger.export.internal.text.Words;
import slotledger.model.board.Slot;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Station;

/** Turns the moves of a machine into what a technician does: first everything out, then everything in. */
final class Steps {

    private final PlanBook book;
    private final Partners partners;
    private final MachinePlan plan;
    private final AssetTag tag;
    private final List<Line> lines = new ArrayList<>();
    private final Map<String, Integer> takenOut = new HashMap<>();

    Steps(PlanBook book, Partners partners, MachinePlan plan) {
        this.book = book;
        this.partners = partners;
        this.plan = plan;
        this.tag = plan.machine().tag();
    }

    List<Line> lines(List<Slot> slots) {
        for (Slot slot : slots) {
            plan.moves().stream()
                    .filter(move -> isHere(move.from(), slot.label()))
                    .forEach(move -> takeOut(slot.label(), move));
        }
        for (Slot slot : slots) {
            plan.moves().stream()
                    .filter(move -> isHere(move.to(), slot.label()))
                    .forEach(move -> putIn(slot.label(), move));
        }
        lines.add(Line.of("Check " + Handling.checks(plan) + ", put back what you took off, close the machine."));
        return List.copyOf(lines);
    }

    private boolean isHere(Station station, String slot) {
        return station instanceof Station.InSlot in && in.machine().equals(tag) && in.slot().equals(slot);
    }

    private void takeOut(String slot, Move move) {
        Line what = Line.of("Take the ", Words.brief(move.content()), " out of slot ", slot, ". ");
        lines.add(what.plus(whereTo(move.to())));
        takenOut.put(slot, lines.size());
    }

    private Line whereTo(Station to) {
        if (to instanceof Station.InSlot in) {
            return in.machine().equals(tag)
                    ? Line.of("Keep it at hand: it goes to slot ", in.slot(), " of this machine.")
                    : Line.of("Put it into the bag for machine ", in.machine().value(), " (slot ", in.slot(), ").");
        }
        return to instanceof Station.OnShelf
                ? Line.of("Put it into a bag for the ", "shelf", "; write this machine's tag on the bag.")
                : Line.of("Put it into a bag for ", "disposal", " (recycling as electronics waste, or sale) after the "
                        + "proof; write this machine's tag on the bag.");
    }

    private void putIn(String slot, Move move) {
        Line what = Line.of("Put one ", Words.brief(move.content()), " into slot ", slot, ". ");
        lines.add(what.plus(partners.isLate(move, plan) ? late((Station.InSlot) move.from()) : whereFrom(move.from())));
    }

    private static Line late(Station.InSlot from) {
        return Line.of("It comes from machine ", from.machine().value(), ", slot ", from.slot(),
                ", which is done later: until then leave the slot empty and the machine open, or borrow one.");
    }

    private Line whereFrom(Station from) {
        if (from instanceof Station.InSlot in) {
            return in.machine().equals(tag)
                    ? Line.of("It is the one you took out of slot ", in.slot(),
                            takenOut.containsKey(in.slot()) ? " in step " + takenOut.get(in.slot()) + "." : ".")
                    : Line.of("It comes from machine ", in.machine().value(), ", slot ", in.slot(),
                            ", in this machine's bag.");
        }
        if (from instanceof Station.FromOrder order) {
            return Words.offer(order.offer(), book)
                    .map(offer -> Line.of("It is new: order from ", offer.supplier(), ", part ", offer.part(), "."))
                    .orElseGet(() -> Line.of("It is new: order ", order.offer(), "."));
        }
        return Line.of("It comes from the ", "shelf", ", in this machine's bag.");
    }
}
