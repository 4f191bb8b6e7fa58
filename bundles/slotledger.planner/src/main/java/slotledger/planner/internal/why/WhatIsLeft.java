package slotledger.planner.internal.why;

import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import slotledger.model.module.Piece;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Spending;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Supplier;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;
import slotledger.planner.internal.choice.Stock;

/**
 * What is still to be had when a plan is carried out: leftovers, rests of packs, and packs suppliers still have.
 *
 * <p>Prices are those of the cheapest single offer for each kind, on top of the plan's own order.
 */
public final class WhatIsLeft {

    private static final long HUNDRED = 100;

    private final Stock stock;
    private final Map<String, Supplier> suppliers;
    private final Spending spending;
    private final int sparePercent;
    private final Map<Piece, Integer> owned = new HashMap<>();
    private final Map<String, Integer> packs = new HashMap<>();

    /**
     * What a plan leaves.
     *
     * @param reusePulled whether pulled leftovers count
     */
    public WhatIsLeft(
            Stock stock,
            Map<String, Supplier> suppliers,
            Spending spending,
            List<Purchase> purchases,
            List<Leftover> leftovers,
            int sparePercent,
            boolean reusePulled) {
        this.stock = stock;
        this.suppliers = suppliers;
        this.spending = spending;
        this.sparePercent = sparePercent;
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

    /** What it would cost in addition to buy what these modules need; empty where no single offer has enough. */
    Optional<Money> price(Map<Integer, Integer> used) {
        Money price = Money.zero(spending.goods().currency());
        Map<String, Money> deliveries = new LinkedHashMap<>();
        for (Map.Entry<Integer, Integer> need : used.entrySet()) {
            Piece piece = stock.pieces().get(need.getKey());
            int missing = need.getValue() - Math.min(need.getValue(), owned.getOrDefault(piece, 0));
            if (missing == 0) {
                continue;
            }
            Optional<Offer> offer = stock.offers(piece).stream()
                    .filter(each -> packsFor(each, missing) <= packsLeft(each))
                    .min(Comparator.comparing(each -> goods(each, missing).plus(delivery(each))));
            if (offer.isEmpty()) {
                return Optional.empty();
            }
            price = price.plus(goods(offer.get(), missing));
            deliveries.put(offer.get().supplier(), delivery(offer.get()));
        }
        return Optional.of(deliveries.values().stream().reduce(price, Money::plus));
    }

    private int packsFor(Offer offer, int modules) {
        long withSpares = -Math.floorDiv(-modules * (HUNDRED + sparePercent), HUNDRED);
        return Math.toIntExact(-Math.floorDiv(-withSpares, offer.packSize()));
    }

    private Money goods(Offer offer, int modules) {
        return offer.total(packsFor(offer, modules));
    }

    private Money delivery(Offer offer) {
        Money none = Money.zero(spending.goods().currency());
        return spending.delivery().containsKey(offer.supplier())
                ? none : suppliers.get(offer.supplier()).shipping().orElse(none);
    }
}
