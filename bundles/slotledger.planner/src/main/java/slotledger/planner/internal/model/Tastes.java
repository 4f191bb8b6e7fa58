package slotledger.planner.internal.model;

import java.util.List;
import slotledger.model.plan.Purchase;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Taste;
import slotledger.solver.Linear;

/** What people would rather buy, in the goals of the search. */
public final class Tastes {

    private static final long HUNDRED = 100;

    private final Choices choices;
    private final List<Offer> offers;

    Tastes(Choices choices, List<Offer> offers) {
        this.choices = choices;
        this.offers = offers;
    }

    /** Minor units by which a pack of the offer counts as cheaper. */
    public static long worthOfPack(Choices choices, Offer offer) {
        return offer.perPack(1).minor() * choices.worthPercent(offer) / HUNDRED;
    }

    /** Minor units by which an order counts as cheaper. */
    public static long worth(Choices choices, List<Purchase> lines) {
        return choices.tastes().isEmpty() ? 0 : lines.stream()
                .mapToLong(line -> Math.multiplyExact(worthOfPack(choices, line.offer()), (long) line.packs()))
                .sum();
    }

    Linear worth(Purchasing purchasing) {
        Linear worth = new Linear();
        for (int offer = 0; !choices.tastes().isEmpty() && offer < offers.size(); offer++) {
            long each = worthOfPack(choices, offers.get(offer));
            if (each != 0) {
                worth.add(purchasing.packs(offer), each);
            }
        }
        return worth;
    }

    /** Modules bought that nobody prefers; nothing where nothing is preferred. */
    Linear unpreferred(Purchasing purchasing) {
        Linear unpreferred = new Linear();
        if (choices.tastes().stream().anyMatch(taste -> taste.attitude() == Taste.Attitude.PREFER)) {
            for (int offer = 0; offer < offers.size(); offer++) {
                if (!choices.prefers(offers.get(offer))) {
                    unpreferred.add(purchasing.modules(offer), 1);
                }
            }
        }
        return unpreferred;
    }
}
