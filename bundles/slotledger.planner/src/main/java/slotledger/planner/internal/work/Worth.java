package slotledger.planner.internal.work;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.module.Piece;
import slotledger.model.plan.Leftover;
import slotledger.model.trade.Offer;
import slotledger.model.unit.Money;

/** Says what leftovers are worth: what as many would cost in the smallest quantity of the cheapest current offer. */
public final class Worth {

    private final Map<Piece, Offer> cheapest = new HashMap<>();

    /** By offers in one currency that hold today. */
    public Worth(List<Offer> offers) {
        for (Offer offer : offers) {
            cheapest.merge(offer.piece(), offer, (one, other) -> compare(one, other) <= 0 ? one : other);
        }
    }

    public List<Leftover> of(List<Leftover> leftovers) {
        return leftovers.stream()
                .map(leftover -> leftover.withWorth(leftover.content().piece().flatMap(this::offer)
                        .map(offer -> price(offer, leftover.count()))))
                .toList();
    }

    private Optional<Offer> offer(Piece piece) {
        return Optional.ofNullable(cheapest.get(piece));
    }

    /** Price of a module, compared exactly: prices of packs times the size of the other pack. */
    private static int compare(Offer one, Offer other) {
        return one.perPack(1).times(other.packSize()).compareTo(other.perPack(1).times(one.packSize()));
    }

    /** Rounded down to the minor unit. */
    private static Money price(Offer offer, int count) {
        Money packs = offer.perPack(1).times(count);
        return new Money(packs.minor() / offer.packSize(), packs.currency());
    }
}
