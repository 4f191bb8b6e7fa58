package slotledger.planner.internal.alone;

import java.util.HashMap;
import java.util.Map;
import java.util.OptionalLong;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.planner.internal.choice.Amounts;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.model.PlanModel;

/** What is still to be had, at the prices of a single purchase. */
final class Shop {

    private static final int HUNDRED = 100;

    private final Counter counter;
    private final Policy policy;
    private final long[] shelf;
    private final long[] buyable;
    private final Map<Long, OptionalLong> prices = new HashMap<>();
    private final Map<String, Long> money = new HashMap<>();

    Shop(Stock stock, Counter counter, Policy policy) {
        this.counter = counter;
        this.policy = policy;
        shelf = stock.pieces().stream().mapToLong(piece -> stock.shelf().count(piece)).toArray();
        buyable = new long[shelf.length];
        for (int kind = 0; kind < buyable.length; kind++) {
            for (Offer offer : counter.offers(kind)) {
                buyable[kind] += offer.packSize() * (long) offer.stock().orElse(Integer.MAX_VALUE);
            }
            // The spares are bought as well.
            buyable[kind] = buyable[kind] * HUNDRED / (HUNDRED + policy.sparePercent());
        }
        policy.costCentreBudgets().forEach((centre, budget) -> money.put(centre, budget.minor()));
    }

    boolean takesFromShelf(Candidate candidate) {
        Amounts used = candidate.used();
        for (int i = 0; i < used.size(); i++) {
            if (shelf[used.kindAt(i)] > 0) {
                return true;
            }
        }
        return false;
    }

    /** Minor units for goods and labour; empty where not all is to be had. */
    OptionalLong price(Candidate candidate) {
        OptionalLong goods = goods(candidate);
        return goods.isEmpty() ? goods : OptionalLong.of(goods.getAsLong() + PlanModel.labour(policy, candidate));
    }

    private OptionalLong goods(Candidate candidate) {
        long sum = 0;
        Amounts used = candidate.used();
        for (int i = 0; i < used.size(); i++) {
            int kind = used.kindAt(i);
            long bought = Math.max(0, used.countAt(i) - shelf[kind]);
            OptionalLong price = bought > buyable[kind] ? OptionalLong.empty() : single(kind, bought);
            if (price.isEmpty()) {
                return price;
            }
            sum += price.getAsLong();
        }
        return OptionalLong.of(sum);
    }

    /** The least for which a single purchase from one offer brings so many. */
    private OptionalLong single(int kind, long modules) {
        return modules == 0 ? OptionalLong.of(0)
                : prices.computeIfAbsent(kind * 1000L + modules, unused -> counter.offers(kind).stream()
                        .filter(offer -> packs(offer, modules) <= offer.stock().orElse(Integer.MAX_VALUE))
                        .mapToLong(offer -> offer.total(packs(offer, modules)).minor())
                        .min());
    }

    private static int packs(Offer offer, long modules) {
        return Math.toIntExact(offer.packsFor(modules));
    }

    /** Takes what a population needs; says no where the cost centre can't pay for it. */
    boolean take(Candidate candidate, String centre) {
        long goods = goods(candidate).orElseThrow();
        if (money.containsKey(centre)) {
            if (goods > money.get(centre)) {
                return false;
            }
            money.merge(centre, -goods, Long::sum);
        }
        candidate.used().visit((kind, count) -> {
            long own = Math.min(shelf[kind], count);
            shelf[kind] -= own;
            buyable[kind] -= count - own;
        });
        return true;
    }
}
