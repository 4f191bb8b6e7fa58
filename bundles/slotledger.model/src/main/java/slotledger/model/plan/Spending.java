package slotledger.model.plan;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Objects;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;

/**
 * What a plan costs.
 *
 * @param goods        all purchase lines, tax left out
 * @param delivery     delivery charges by supplier, tax left out
 * @param labour       work on all machines
 * @param byCostCentre goods by cost centre; spares and rests under the empty name
 * @param tax          tax on goods and delivery by supplier; empty where nothing is known of tax
 */
public record Spending(
        Money goods,
        Map<String, Money> delivery,
        Money labour,
        Map<String, Money> byCostCentre,
        Map<String, Money> tax) {

    /** Nothing is known of tax. */
    public Spending(Money goods, Map<String, Money> delivery, Money labour, Map<String, Money> byCostCentre) {
        this(goods, delivery, labour, byCostCentre, Map.of());
    }

    public Spending {
        Objects.requireNonNull(goods, "goods");
        delivery = Collections.unmodifiableMap(new LinkedHashMap<>(delivery));
        Objects.requireNonNull(labour, "labour");
        byCostCentre = Collections.unmodifiableMap(new LinkedHashMap<>(byCostCentre));
        tax = Collections.unmodifiableMap(new LinkedHashMap<>(tax));
    }

    public Money deliveryTotal() {
        return delivery.values().stream().reduce(Money.zero(goods.currency()), Money::plus);
    }

    public Money taxTotal() {
        return tax.values().stream().reduce(Money.zero(goods.currency()), Money::plus);
    }

    /** What has to be paid to suppliers, tax left out. */
    public Money payable() {
        return goods.plus(deliveryTotal());
    }

    /** What a budget limits by these rules: goods and delivery, without tax or with it. */
    public Money againstBudget(Tax rules) {
        return rules.inBudgets() ? payable().plus(taxTotal()) : payable();
    }

    /** What a plan is judged by: goods, delivery and labour, tax left out. */
    public Money total() {
        return payable().plus(labour);
    }
}
