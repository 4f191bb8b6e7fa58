package slotledger.workbench.internal.order;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.PriceStep;
import slotledger.model.unit.Money;
import slotledger.workbench.internal.Texts;
import slotledger.workbench.internal.lines.Line;

/** The order of a plan: a heading for each supplier, a line for each part. */
final class OrderLines {

    /** Tags in a sentence, before it says how many more there are. */
    private static final int SHOWN = 12;

    private OrderLines() {
    }

    /** One line about the whole order. */
    static String summary(Optional<Plan> plan) {
        if (plan.isEmpty()) {
            return Texts.order_no_plan;
        }
        Plan made = plan.get();
        if (made.purchases().isEmpty()) {
            return Texts.order_nothing;
        }
        List<String> parts = new ArrayList<>();
        parts.add(Texts.with(Texts.order_to_pay, made.spending().payable(), made.spending().goods(),
                made.spending().deliveryTotal()));
        Money limited = made.spending().againstBudget(made.policy().buying().tax());
        if (!made.spending().tax().isEmpty()) {
            parts.add(Texts.with(Texts.order_tax, made.spending().taxTotal()));
        }
        made.policy().budget().ifPresent(budget ->
                parts.add(Texts.with(Texts.order_budget, budget, budget.minus(limited))));
        return String.join(" · ", parts);
    }

    static List<Line> of(Plan plan) {
        Map<String, List<Purchase>> bySupplier = plan.purchases().stream().collect(Collectors.groupingBy(
                purchase -> purchase.offer().supplier(), LinkedHashMap::new, Collectors.toList()));
        List<Line> lines = new ArrayList<>();
        bySupplier.forEach((supplier, purchases) -> lines.add(supplier(plan, supplier, purchases)));
        return List.copyOf(lines);
    }

    private static Line supplier(Plan plan, String supplier, List<Purchase> purchases) {
        Money goods = purchases.stream().map(Purchase::total)
                .reduce(Money.zero(plan.policy().currency()), Money::plus);
        Money delivery = plan.spending().delivery()
                .getOrDefault(supplier, Money.zero(plan.policy().currency()));
        int packs = purchases.stream().mapToInt(Purchase::packs).sum();
        int modules = purchases.stream().mapToInt(Purchase::modules).sum();
        String terms = delivery.isZero() ? Texts.order_delivery_free : Texts.with(Texts.order_delivery, delivery);
        return new Line(
                List.of(supplier, terms, Integer.toString(packs), Integer.toString(modules), "",
                        goods.plus(delivery).toString()),
                Texts.with(Texts.order_supplier, supplier, goods, delivery, goods.plus(delivery)),
                Optional.empty(), purchases.stream().map(OrderLines::line).toList());
    }

    private static Line line(Purchase purchase) {
        Offer offer = purchase.offer();
        return new Line(
                List.of(offer.part(), offer.piece().toString(), Integer.toString(purchase.packs()),
                        Integer.toString(purchase.modules()), offer.perPack(purchase.packs()).toString(),
                        purchase.total().toString(),
                        Integer.toString(purchase.uses().size()),
                        offer.leadDays().isPresent() ? Texts.with(Texts.order_days, offer.leadDays().getAsInt())
                                : Texts.unknown,
                        offer.validUntil().map(Object::toString).orElse(Texts.unknown)),
                inFull(purchase), purchase.uses().stream().findFirst().map(Purchase.Use::machine), List.of());
    }

    private static String inFull(Purchase purchase) {
        Offer offer = purchase.offer();
        String prices = offer.steps().stream().map(OrderLines::step).collect(Collectors.joining(", "));
        String rule = offer.steps().size() == 1 ? ""
                : " " + (offer.rule() == PriceRule.ALL_PACKS ? Texts.order_all_packs : Texts.order_further_packs);
        String machines = purchase.uses().stream().limit(SHOWN).map(use -> use.machine().value())
                .collect(Collectors.joining(", "));
        String more = purchase.uses().size() > SHOWN
                ? " " + Texts.with(Texts.order_more, purchase.uses().size() - SHOWN) : "";
        return Texts.with(Texts.order_line, offer.piece(), prices + rule) + "\n"
                + Texts.with(Texts.order_for, machines + more)
                + (purchase.spares() + purchase.over() == 0 ? ""
                        : " " + Texts.with(Texts.order_spares, purchase.spares(), purchase.over()));
    }

    private static String step(PriceStep step) {
        return Texts.with(Texts.order_step, step.fromPacks(), step.perPack());
    }
}
