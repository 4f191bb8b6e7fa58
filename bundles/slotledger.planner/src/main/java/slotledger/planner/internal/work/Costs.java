package slotledger.planner.internal.work;

import java.util.HashMap;
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
        }
        Map<String, Money> delivery = new LinkedHashMap<>();
        orders.forEach((supplier, value) -> delivery.put(supplier, delivery(suppliers.get(supplier), value)));
        Money shared = none;
        for (Map.Entry<String, Money> share : shares(purchases, none).entrySet()) {
            centres.put(share.getKey(), share.getValue());
            shared = shared.plus(share.getValue());
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

    /** By name: a centre's part of each line by its modules, rounded down; no money where there is no name. */
    private static Map<String, Money> shares(List<Purchase> purchases, Money none) {
        Map<String, Money> shares = new TreeMap<>();
        for (Purchase line : purchases) {
            Map<String, Long> modules = new HashMap<>();
            line.uses().forEach(use -> modules.merge(use.costCentre(), (long) use.modules(), Long::sum));
            if (modules.remove("") != null) {
                shares.merge("", none, Money::plus);
            }
            modules.forEach((centre, count) -> {
                long minor = Math.multiplyExact(line.total().minor(), count) / line.modules();
                shares.merge(centre, new Money(minor, none.currency()), Money::plus);
            });
        }
        return shares;
    }
}
