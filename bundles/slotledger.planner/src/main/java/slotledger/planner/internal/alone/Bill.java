package slotledger.planner.internal.alone;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Money;
import slotledger.planner.internal.work.Costs;

/**
 * What an order costs.
 *
 * @param goods    all modules and fillers
 * @param delivery of all suppliers
 */
record Bill(Money goods, Money delivery) {

    /** Packs of one offer. */
    record Line(Offer offer, int packs) {
        Line {
            Objects.requireNonNull(offer, "offer");
        }

        Money price() {
            return offer.total(packs);
        }

        boolean hasMore() {
            return offer.stock().isEmpty() || packs < offer.stock().getAsInt();
        }
    }

    Bill {
        Objects.requireNonNull(goods, "goods");
        Objects.requireNonNull(delivery, "delivery");
    }

    /** Adds up; an order too small for its supplier is filled up. Empty where that can't be done. */
    static Optional<Bill> of(List<Line> lines, Map<String, Supplier> suppliers, Money none) {
        Map<String, Map<String, Line>> orders = new TreeMap<>();
        for (Line line : lines) {
            orders.computeIfAbsent(line.offer().supplier(), unused -> new LinkedHashMap<>())
                    .put(line.offer().id(), line);
        }
        Money goods = none;
        Money delivery = none;
        for (Map.Entry<String, Map<String, Line>> order : orders.entrySet()) {
            Supplier supplier = suppliers.get(order.getKey());
            Optional<Money> value = filledUp(order.getValue(), supplier, none);
            if (value.isEmpty()) {
                return Optional.empty();
            }
            goods = goods.plus(value.get());
            delivery = delivery.plus(Costs.delivery(supplier, value.get()));
        }
        return Optional.of(new Bill(goods, delivery));
    }

    private static Optional<Money> filledUp(Map<String, Line> lines, Supplier supplier, Money none) {
        Money value = sum(lines, none);
        Money least = supplier.minimum().orElse(none);
        for (Line first : List.copyOf(lines.values())) {
            Line line = first;
            while (value.compareTo(least) < 0 && line.hasMore() && !line.offer().perPack(line.packs() + 1).isZero()) {
                line = new Line(line.offer(), line.packs() + 1);
                lines.put(line.offer().id(), line);
                value = sum(lines, none);
            }
        }
        return value.compareTo(least) < 0 ? Optional.empty() : Optional.of(value);
    }

    private static Money sum(Map<String, Line> lines, Money none) {
        return lines.values().stream().map(Line::price).reduce(none, Money::plus);
    }

    Money payable() {
        return goods.plus(delivery);
    }
}
