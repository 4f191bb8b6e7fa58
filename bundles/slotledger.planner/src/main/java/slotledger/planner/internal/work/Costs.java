package slotledger.planner.internal.work;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Spending;
import slotledger.model.trade.Supplier;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;

/** Adds up what a plan costs. */
public final class Costs {

    private Costs() {
    }

    static Spending of(List<Purchase> purchases, Map<String, Supplier> suppliers, Tax tax, Money labour) {
        Money none = Money.zero(labour.currency());
        Map<String, Money> orders = new TreeMap<>();
        Map<String, Money> centres = new TreeMap<>();
        Money goods = none;
        for (Purchase line : purchases) {
            goods = goods.plus(line.total());
            orders.merge(line.offer().supplier(), line.total(), Money::plus);
            for (Purchase.Use use : line.uses()) {
                centres.merge(use.costCentre(), none, Money::plus);
            }
        }
        Map<String, Money> delivery = new LinkedHashMap<>();
        orders.forEach((supplier, value) -> delivery.put(supplier, delivery(suppliers.get(supplier), value)));
        Money shared = none;
        for (String centre : List.copyOf(centres.keySet())) {
            if (!centre.isEmpty()) {
                Money share = share(purchases, centre, none);
                centres.put(centre, share);
                shared = shared.plus(share);
            }
        }
        if (!goods.equals(shared)) {
            centres.put("", goods.minus(shared));
        }
        return new Spending(goods, delivery, labour, centres, Taxes.of(purchases, delivery, tax));
    }

    /** What a supplier charges to deliver an order of this value. */
    public static Money delivery(Supplier supplier, Money value) {
        boolean isFree = supplier.freeFrom().filter(from -> value.compareTo(from) >= 0).isPresent();
        return isFree ? Money.zero(value.currency()) : supplier.shipping().orElse(Money.zero(value.currency()));
    }

    /** A centre's part of each line by its modules, rounded down to the minor unit. */
    private static Money share(List<Purchase> purchases, String centre, Money none) {
        Money share = none;
        for (Purchase line : purchases) {
            long modules = line.uses().stream()
                    .filter(use -> use.costCentre().equals(centre)).mapToInt(Purchase.Use::modules).sum();
            long minor = Math.multiplyExact(line.total().minor(), modules) / line.modules();
            share = share.plus(new Money(minor, none.currency()));
        }
        return share;
    }
}
