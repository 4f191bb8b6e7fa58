package slotledger.planner.internal.alone;

import java.util.Optional;
import java.util.OptionalLong;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;

/** Buys for the machines of one class, one after the other. */
final class Errand {

    private final Options options;
    private final Shop shop;
    private Candidate cheapest;
    private boolean givenUp;

    Errand(Options options, Shop shop) {
        this.options = options;
        this.shop = shop;
    }

    Options options() {
        return options;
    }

    /** What the next machine gets, taken from the shop; empty where nothing is left for it. */
    Optional<Candidate> next() {
        String centre = options.group().costCentre();
        // Shelf and stock only get less: what was cheapest stays so while it can be bought without the shelf.
        if (cheapest == null || shop.takesFromShelf(cheapest) || shop.price(cheapest).isEmpty()) {
            choose();
        }
        return cheapest != null && shop.take(cheapest, centre) ? Optional.of(cheapest) : Optional.empty();
    }

    private void choose() {
        cheapest = null;
        long least = Long.MAX_VALUE;
        if (givenUp) {
            return;
        }
        for (Candidate candidate : options.candidates()) {
            OptionalLong price = candidate.opens() && candidate.onTarget()
                    ? shop.price(candidate) : OptionalLong.empty();
            if (price.isPresent() && price.getAsLong() < least) {
                least = price.getAsLong();
                cheapest = candidate;
            }
        }
        givenUp = cheapest == null;
    }
}
