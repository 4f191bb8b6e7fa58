package slotledger.planner.internal;

import static slotledger.planner.internal.PlanAudit.require;

import java.math.BigDecimal;
import java.math.BigInteger;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import slotledger.model.module.Piece;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.trade.Buying;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Supplier;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;
import slotledger.model.unit.Percent;
import slotledger.planner.PlanRequest;

/** The part of the audit that checks offers, prices, spares, tax and budgets, all from the offers again. */
final class MoneyAudit {

    private final PlanRequest request;
    private final Policy policy;
    private final Buying buying;
    private final Money none;

    MoneyAudit(PlanRequest request) {
        this.request = request;
        this.policy = request.policy();
        this.buying = policy.buying();
        this.none = Money.zero(policy.currency());
    }

    void check(Plan plan) {
        plan.purchases().forEach(this::checkPurchase);
        checkSpares(plan);
        checkMoney(plan);
        checkBudgets(plan);
    }

    private void checkPurchase(Purchase line) {
        Offer offer = line.offer();
        require(request.market().offers().contains(offer), "The offer %s must exist.", offer.id());
        require(offer.stock().isEmpty() || line.packs() <= offer.stock().getAsInt(),
                "The packs (%d) of %s must be in stock.", line.packs(), offer.id());
        require(line.total().minor() == price(offer, line.packs()), "The price of %s must be that of the offer.",
                offer.id());
        require(buying.keepPrices() || offer.validUntil().filter(last -> last.isBefore(request.date())).isEmpty(),
                "The offer %s must hold.", offer.id());
        require(offer.leadDays().isEmpty() || buying.neededBy().isEmpty()
                        || !request.date().plusDays(offer.leadDays().getAsInt()).isAfter(buying.neededBy().get()),
                "The offer %s must arrive in time.", offer.id());
        offer.steps().forEach(step -> checkExchange(offer, step));
    }

    private void checkExchange(Offer offer, PriceStep step) {
        require(step.perPack().currency().equals(policy.currency()), "The price of %s must be in %s.",
                offer.id(), policy.currency());
        step.quoted().ifPresent(quoted -> {
            BigDecimal rate = buying.rates().get(quoted.currency().getCurrencyCode()).rate();
            require(quoted.amount().multiply(rate)
                            .setScale(policy.currency().getDefaultFractionDigits(), RoundingMode.HALF_UP)
                            .compareTo(step.perPack().amount()) == 0,
                    "The price of %s must be turned at the stated rate.", offer.id());
        });
    }

    /** The price of so many packs, one pack after the other. */
    private static long price(Offer offer, int packs) {
        long price = 0;
        for (int pack = 1; pack <= packs; pack++) {
            int counts = offer.rule() == PriceRule.ALL_PACKS ? packs : pack;
            long perPack = 0;
            for (PriceStep step : offer.steps()) {
                perPack = counts >= step.fromPacks() ? step.perPack().minor() : perPack;
            }
            price = Math.addExact(price, perPack);
        }
        return price;
    }

    /** Spares of each kind bought, in percent of the modules used, rounded up; at least one where that is wanted. */
    private void checkSpares(Plan plan) {
        Map<Piece, int[]> kinds = new LinkedHashMap<>();
        for (Purchase line : plan.purchases()) {
            int[] counts = kinds.computeIfAbsent(line.offer().piece(), unused -> new int[2]);
            counts[0] += line.modules() - line.spares() - line.over();
            counts[1] += line.spares();
        }
        kinds.forEach((kind, counts) -> require(
                counts[1] * 100L >= (long) counts[0] * policy.sparePercent()
                        && (counts[0] == 0 || counts[1] > 0 || !policy.atLeastOneSpare()),
                "The spares (%d) of %s must be enough for %d used.", counts[1], kind, counts[0]));
    }

    private void checkMoney(Plan plan) {
        Map<String, Money> orders = new TreeMap<>();
        plan.purchases().forEach(line -> orders.merge(line.offer().supplier(), line.total(), Money::plus));
        Money payable = none;
        Money taxes = none;
        for (Map.Entry<String, Money> order : orders.entrySet()) {
            Supplier supplier = request.market().suppliers().get(order.getKey());
            require(supplier.minimum().filter(least -> order.getValue().compareTo(least) < 0).isEmpty(),
                    "The order (%s) from %s must reach the smallest order value.", order.getValue(), supplier.name());
            boolean isFree = supplier.freeFrom().filter(from -> order.getValue().compareTo(from) >= 0).isPresent();
            Money delivery = isFree ? none : supplier.shipping().orElse(none);
            payable = payable.plus(order.getValue()).plus(delivery);
            taxes = taxes.plus(tax(plan, order.getKey(), delivery));
        }
        Money labour = plan.machines().stream().map(MachinePlan::labour).reduce(none, Money::plus);
        require(payable.equals(plan.spending().payable()), "The money for suppliers must go up exactly.");
        require(taxes.equals(plan.spending().taxTotal()), "The tax (%s) must be %s.", plan.spending().taxTotal(),
                taxes);
        require(labour.equals(plan.spending().labour()), "The labour must go up exactly.");
        Money byCentre = plan.spending().byCostCentre().values().stream().reduce(none, Money::plus);
        require(byCentre.equals(plan.spending().goods()), "The goods of the cost centres must add up to all goods.");
    }

    private Money tax(Plan plan, String supplier, Money delivery) {
        Tax tax = buying.tax();
        BigInteger parts = times(delivery.minor(), tax.onDelivery());
        for (Purchase line : plan.purchases()) {
            if (line.offer().supplier().equals(supplier)) {
                parts = parts.add(times(line.total().minor(), tax.on(line.offer())));
            }
        }
        BigInteger half = BigInteger.valueOf(Percent.PARTS / 2);
        return new Money(parts.add(half).divide(BigInteger.valueOf(Percent.PARTS)).longValueExact(),
                policy.currency());
    }

    private static BigInteger times(long minor, Percent percent) {
        return BigInteger.valueOf(minor).multiply(BigInteger.valueOf(percent.parts()));
    }

    private void checkBudgets(Plan plan) {
        Money limited = plan.spending().payable();
        if (buying.tax().inBudgets()) {
            limited = limited.plus(plan.spending().taxTotal());
        }
        Money spent = limited;
        require(policy.budget().filter(most -> spent.compareTo(most) > 0).isEmpty(), "The budget must hold.");
        policy.costCentreBudgets().forEach((centre, most) ->
                require(isWithin(plan, centre, most), "The budget of cost centre %s must hold.", centre));
    }

    /** A centre pays its modules by their share of each line; counted as an exact fraction. */
    private boolean isWithin(Plan plan, String centre, Money most) {
        BigInteger above = BigInteger.ZERO;
        BigInteger below = BigInteger.ONE;
        for (Purchase line : plan.purchases()) {
            long modules = line.uses().stream()
                    .filter(use -> use.costCentre().equals(centre)).mapToLong(Purchase.Use::modules).sum();
            long taxed = buying.tax().inBudgets() ? buying.tax().on(line.offer()).parts() : 0;
            BigInteger share = BigInteger.valueOf(line.total().minor()).multiply(BigInteger.valueOf(modules))
                    .multiply(BigInteger.valueOf(Percent.PARTS + taxed));
            BigInteger whole = BigInteger.valueOf(line.modules()).multiply(BigInteger.valueOf(Percent.PARTS));
            above = above.multiply(whole).add(share.multiply(below));
            below = below.multiply(whole);
            BigInteger common = above.gcd(below);
            above = above.divide(common);
            below = below.divide(common);
        }
        return above.compareTo(below.multiply(BigInteger.valueOf(most.minor()))) <= 0;
    }
}
