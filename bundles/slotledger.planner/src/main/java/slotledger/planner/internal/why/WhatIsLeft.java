package slotledger.planner.internal.why;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;
import slotledger.model.module.Piece;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Spending;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;
import slotledger.planner.internal.choice.Stock;

/**
 * What is still to be had when a plan is carried out: leftovers, rests of packs, and packs suppliers still have.
 */
public final class WhatIsLeft {

    private final Stock stock;
    private final Spending spending;
    private final Map<Piece, Integer> owned = new HashMap<>();
    private final Map<String, Integer> packs = new HashMap<>();

    /**
     * What a plan leaves.
     *
     * @param reusePulled whether pulled leftovers count
     */
    public WhatIsLeft(
            Stock stock,
            Spending spending,
            List<Purchase> purchases,
            List<Leftover> leftovers,
            boolean reusePulled) {
        this.stock = stock;
        this.spending = spending;
        for (Leftover leftover : leftovers) {
            if (leftover.origin() == Leftover.Origin.SHELF
                    || reusePulled && leftover.origin() == Leftover.Origin.PULLED) {
                leftover.content().piece().ifPresent(piece -> owned.merge(piece, leftover.count(), Integer::sum));
            }
        }
        for (Purchase purchase : purchases) {
            packs.merge(purchase.offer().id(), purchase.packs(), Integer::sum);
            owned.merge(purchase.offer().piece(), purchase.over(), Integer::sum);
        }
    }

    /** What of the plan a budget limits. */
    Money againstBudget(Tax tax) {
        return spending.againstBudget(tax);
    }

    /** Goods of the plan for a cost centre. */
    Money goodsOf(String costCentre) {
        return spending.byCostCentre().getOrDefault(costCentre, Money.zero(spending.goods().currency()));
    }

    /** What can't be had, by number of its kind. */
    SortedMap<Integer, Integer> lacks(Map<Integer, Integer> used) {
        SortedMap<Integer, Integer> lacks = new TreeMap<>();
        used.forEach((number, count) -> {
            Piece piece = stock.pieces().get(number);
            long there = owned.getOrDefault(piece, 0);
            for (Offer offer : stock.offers(piece)) {
                there += Math.min(count, (long) packsLeft(offer) * offer.packSize());
            }
            if (there < count) {
                lacks.put(number, Math.toIntExact(count - there));
            }
        });
        return lacks;
    }

    private int packsLeft(Offer offer) {
        return offer.stock().isEmpty()
                ? Integer.MAX_VALUE : offer.stock().getAsInt() - packs.getOrDefault(offer.id(), 0);
    }
}
