package slotledger.planner.internal.work;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.model.plan.Purchase;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;
import slotledger.model.unit.Percent;

/** Works out the tax of an order. */
final class Taxes {

    private Taxes() {
    }

    /** By supplier; rounded once for each of them, half a minor unit up. Empty where nothing is known of tax. */
    static Map<String, Money> of(List<Purchase> purchases, Map<String, Money> delivery, Tax tax) {
        Map<String, Money> taxes = new LinkedHashMap<>();
        if (tax.percent().isEmpty() && purchases.stream().allMatch(line -> line.offer().tax().isEmpty())) {
            return taxes;
        }
        delivery.forEach((supplier, charge) -> {
            BigDecimal exact = share(charge, tax.onDelivery());
            for (Purchase line : purchases) {
                if (line.offer().supplier().equals(supplier)) {
                    exact = exact.add(share(line.total(), tax.on(line.offer())));
                }
            }
            taxes.put(supplier,
                    new Money(exact.setScale(0, RoundingMode.HALF_UP).longValueExact(), charge.currency()));
        });
        return taxes;
    }

    /** Minor units, not rounded. */
    private static BigDecimal share(Money amount, Percent percent) {
        return BigDecimal.valueOf(amount.minor()).multiply(percent.value()).movePointLeft(2);
    }
}
