package slotledger.planner.internal.alone;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Money;
import slotledger.planner.internal.choice.Stock;

/** Orders the sum of what is needed, each kind by itself; leaves a supplier out where that saves more than it costs. */
final class Counter {

    private static final int ROUNDS = 2;

    private final List<List<Offer>> offers = new ArrayList<>();
    private final Map<String, Supplier> suppliers;
    private final Money none;

    Counter(Stock stock, Map<String, Supplier> suppliers, Money none) {
        stock.pieces().forEach(piece -> offers.add(new ArrayList<>()));
        stock.offers().forEach(offer -> offers.get(stock.number(offer.piece())).add(offer));
        this.suppliers = suppliers;
        this.none = none;
    }

    /** Offers of a kind, in file order. */
    List<Offer> offers(int kind) {
        return List.copyOf(offers.get(kind));
    }

    /** What an order of so many modules of each kind costs; empty where they can't all be had. */
    Optional<Bill> order(long[] modules) {
        Set<String> left = new HashSet<>();
        Optional<Bill> best = order(modules, left);
        for (int round = 0; round < ROUNDS; round++) {
            for (String supplier : new TreeSet<>(suppliers.keySet())) {
                if (left.add(supplier)) {
                    Optional<Bill> other = order(modules, left);
                    if (isBetter(other, best)) {
                        best = other;
                    } else {
                        left.remove(supplier);
                    }
                }
            }
        }
        return best;
    }

    private static boolean isBetter(Optional<Bill> one, Optional<Bill> other) {
        return one.isPresent() && (other.isEmpty() || one.get().payable().compareTo(other.get().payable()) < 0);
    }

    private Optional<Bill> order(long[] modules, Set<String> left) {
        List<Bill.Line> lines = new ArrayList<>();
        for (int kind = 0; kind < modules.length; kind++) {
            List<Offer> usable = offers.get(kind).stream().filter(offer -> !left.contains(offer.supplier())).toList();
            Optional<List<Bill.Line>> basket = Basket.of(usable, modules[kind]);
            if (basket.isEmpty()) {
                return Optional.empty();
            }
            lines.addAll(basket.get());
        }
        return Bill.of(lines, suppliers, none);
    }
}
