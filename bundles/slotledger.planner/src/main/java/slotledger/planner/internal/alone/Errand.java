package slotledger.planner.internal.alone;

import java.util.Optional;
import java.util.OptionalLong;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;

/** Buys for the machines of one class, one after the other. */
final class Errand {

    /**
     * What a machine gets.
     *
     * @param weight how much the machine counts
     */
    record Upgrade(Candidate candidate, long weight) {
    }

    private final Options options;
    private final Shop shop;
    private Candidate cheapest;
    private Optional<Upgrade> upgrade = Optional.empty();
    private boolean givenUp;

    Errand(Options options, Shop shop) {
        this.options = options;
        this.shop = shop;
    }

    /** What the next machine gets, taken from the shop; empty where nothing is left for it. */
    Optional<Upgrade> next() {
        String centre = options.group().costCentre();
        // Shelf and stock only get less: what was cheapest stays so while it can be bought without the shelf.
        if (cheapest == null || shop.takesFromShelf(cheapest) || shop.price(cheapest).isEmpty()) {
            choose();
        }
        return cheapest != null && shop.take(cheapest, centre) ? upgrade : Optional.empty();
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
        upgrade = Optional.ofNullable(cheapest).map(one -> new Upgrade(one, options.group().weight()));
    }
}
