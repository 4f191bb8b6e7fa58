package slotledger.model.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import slotledger.model.unit.Money;

/**
 * What a plan costs.
 *
 * @param goods        all purchase lines, tax left out
 * @param delivery     delivery charges by supplier
 * @param labour       work on all machines
 * @param byCostCentre goods by cost centre; spares and rests under the empty name
 */
public record Spending(Money goods, Map<String, Money> delivery, Money labour, Map<String, Money> byCostCentre) {

    public Spending {
        Objects.requireNonNull(goods, "goods");
        delivery = Collections.unmodifiableMap(new LinkedHashMap<>(delivery));
        Objects.requireNonNull(labour, "labour");
        byCostCentre = Collections.unmodifiableMap(new LinkedHashMap<>(byCostCentre));
    }

    public Money deliveryTotal() {
        return delivery.values().stream().reduce(Money.zero(goods.currency()), Money::plus);
    }

    /** What has to be paid to suppliers; this is what a budget limits. */
    public Money payable() {
        return goods.plus(deliveryTotal());
    }

    public Money total() {
        return payable().plus(labour);
    }
}
