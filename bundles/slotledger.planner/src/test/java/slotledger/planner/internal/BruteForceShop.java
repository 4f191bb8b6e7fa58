package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.module.Piece;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Percent;
import slotledger.planner.PlanRequest;

/**
 * The cheapest order for given numbers of modules: tries every number of packs of every offer, with all terms of the
 * suppliers, tax and the budget. Prices stand in tables because they are looked up some million times a fleet.
 */
final class BruteForceShop {

    private static final int MOST_PACKS = 12;
    private static final int HUNDRED = 100;

    private final PlanRequest request;
    private final List<Offer> offers;
    private final List<Supplier> suppliers;
    private final int[] kind;
    private final int[] supplier;
    private final int[] most;
    private final long[][] value;
    private final int[] tax;
    private final Map<List<Integer>, Long> known = new HashMap<>();

    /**
     * @param kinds    of modules, in the order in which numbers of them are asked for
     * @param mayOrder by offer, whether it may be ordered at all
     */
    BruteForceShop(PlanRequest request, List<Piece> kinds, boolean[] mayOrder) {
        this.request = request;
        offers = request.market().offers();
        suppliers = new ArrayList<>(request.market().suppliers().values());
        kind = offers.stream().mapToInt(offer -> kinds.indexOf(offer.piece())).toArray();
        supplier = offers.stream().mapToInt(offer -> numberOf(offer.supplier())).toArray();
        tax = offers.stream().mapToInt(offer -> rate(offer.tax())).toArray();
        most = new int[offers.size()];
        value = new long[offers.size()][MOST_PACKS + 1];
        for (int i = 0; i < most.length; i++) {
            most[i] = mayOrder[i] ? Math.min(MOST_PACKS, offers.get(i).stock().orElse(MOST_PACKS)) : 0;
            for (int packs = 0; packs <= MOST_PACKS; packs++) {
                value[i][packs] = value(offers.get(i), packs);
            }
        }
    }

    private int numberOf(String name) {
        for (int i = 0; i < suppliers.size(); i++) {
            if (suppliers.get(i).name().equals(name)) {
                return i;
            }
        }
        throw new IllegalArgumentException("The supplier (%s) must be in the market.".formatted(name));
    }

    /** Whole percents only, so that sums of them are exact. */
    private int rate(Optional<Percent> own) {
        return own.or(() -> request.policy().buying().tax().percent()).map(each -> each.value().intValueExact())
                .orElse(0);
    }

    private static long value(Offer offer, int packs) {
        long value = 0;
        for (int pack = 1; pack <= packs; pack++) {
            int reached = offer.rule() == PriceRule.ALL_PACKS ? packs : pack;
            value += offer.steps().stream().filter(step -> step.fromPacks() <= reached)
                    .reduce((first, second) -> second).orElseThrow().perPack().minor();
        }
        return value;
    }

    /** Minor units with delivery, for so many modules of each kind; the largest number where there is no such order. */
    long cheapest(List<Integer> needs) {
        return known.computeIfAbsent(needs, each -> order(wanted(each), 0, new int[offers.size()]));
    }

    private int[] wanted(List<Integer> needs) {
        int[] wanted = new int[needs.size()];
        for (int i = 0; i < wanted.length; i++) {
            int need = needs.get(i);
            wanted[i] = (int) Math.ceil(need * (HUNDRED + request.policy().sparePercent()) / (double) HUNDRED);
            if (request.policy().atLeastOneSpare() && need > 0) {
                wanted[i] = Math.max(wanted[i], need + 1);
            }
        }
        return wanted;
    }

    private long order(int[] wanted, int offer, int[] packs) {
        if (offer == packs.length) {
            return isEnough(wanted, packs) ? price(packs) : Long.MAX_VALUE;
        }
        long cheapest = Long.MAX_VALUE;
        for (int count = 0; count <= most[offer]; count++) {
            packs[offer] = count;
            cheapest = Math.min(cheapest, order(wanted, offer + 1, packs));
        }
        packs[offer] = 0;
        return cheapest;
    }

    private boolean isEnough(int[] wanted, int[] packs) {
        int[] left = wanted.clone();
        for (int i = 0; i < packs.length; i++) {
            left[kind[i]] -= packs[i] * offers.get(i).packSize();
        }
        return Arrays.stream(left).allMatch(each -> each <= 0);
    }

    private long price(int[] packs) {
        long sum = 0;
        long taxes = 0;
        for (int number = 0; number < suppliers.size(); number++) {
            Supplier from = suppliers.get(number);
            long goods = 0;
            long taxed = 0;
            boolean isUsed = false;
            for (int i = 0; i < packs.length; i++) {
                if (supplier[i] == number && packs[i] > 0) {
                    goods += value[i][packs[i]];
                    taxed += value[i][packs[i]] * tax[i];
                    isUsed = true;
                }
            }
            if (isUsed && from.minimum().isPresent() && goods < from.minimum().get().minor()) {
                return Long.MAX_VALUE;
            }
            boolean isFree = from.freeFrom().isPresent() && goods >= from.freeFrom().get().minor();
            long delivery = isUsed && !isFree ? from.shipping().map(money -> money.minor()).orElse(0L) : 0;
            sum += goods + delivery;
            taxes += Math.round((taxed + delivery * rate(Optional.empty())) / (double) HUNDRED);
        }
        long limited = request.policy().buying().tax().inBudgets() ? sum + taxes : sum;
        boolean isTooDear = request.policy().budget().isPresent() && limited > request.policy().budget().get().minor();
        return isTooDear ? Long.MAX_VALUE : sum;
    }
}
