package slotledger.planner.internal.model;

import java.util.ArrayList;
import java.util.List;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceRule;

/**
 * A range of quantities in which an offer's price is a straight line: so many packs cost fixed + perPack for each of
 * them. Both price rules have this form.
 *
 * @param low     least packs
 * @param high    most packs
 * @param fixed   minor units, whatever the quantity; below zero where further packs are dearer
 * @param perPack minor units for each pack
 */
record PriceSpan(long low, long high, long fixed, long perPack) {

    static List<PriceSpan> of(Offer offer, long most) {
        List<PriceSpan> spans = new ArrayList<>();
        for (int i = 0; i < offer.steps().size() && offer.steps().get(i).fromPacks() <= most; i++) {
            int low = offer.steps().get(i).fromPacks();
            boolean hasNext = i + 1 < offer.steps().size() && offer.steps().get(i + 1).fromPacks() <= most;
            long high = hasNext ? offer.steps().get(i + 1).fromPacks() - 1L : most;
            long perPack = offer.steps().get(i).perPack().minor();
            long fixed = offer.rule() == PriceRule.ALL_PACKS
                    ? 0 : Math.subtractExact(offer.total(low).minor(), Math.multiplyExact(perPack, (long) low));
            spans.add(new PriceSpan(low, high, fixed, perPack));
        }
        return spans;
    }

    /** The most that a pack can cost on average, rounded up; exact where nothing is fixed. */
    long share() {
        long packs = fixed > 0 ? low : high;
        return perPack - Math.floorDiv(-fixed, packs);
    }
}
