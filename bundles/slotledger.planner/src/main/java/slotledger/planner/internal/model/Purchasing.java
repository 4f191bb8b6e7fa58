package slotledger.planner.internal.model;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.stream.Stream;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.Supplier;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;
import slotledger.model.unit.Percent;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;

/**
 * The part of the programme that buys: packs of each offer at each price step, and what suppliers charge.
 *
 * <p>For each step of an offer a number of packs q; with several steps also a choice z with lo·z &lt;= q &lt;= hi·z,
 * at most one of them. So many packs cost fixed·z + perPack·q. For each supplier with terms a choice w (used) and
 * f &lt;= w (delivery free).
 */
final class Purchasing {

    /**
     * One price step of an offer.
     *
     * @param offer    place of the offer in the list of offers
     * @param span     its quantities and prices
     * @param variable number of packs at this step
     * @param choice   whether it is this step; -1 where there is only one, which has nothing fixed
     */
    record Step(int offer, PriceSpan span, int variable, int choice) {

        /** A multiple of the price of the packs at this step. */
        Linear price(long times) {
            Linear price = new Linear().add(variable, Math.multiplyExact(span.perPack(), times));
            return choice < 0 ? price : price.add(choice, Math.multiplyExact(span.fixed(), times));
        }
    }

    /** What a search decides first: few choices that move much money before many that move little. */
    private static final int SUPPLIERS = 3;
    private static final int PRICES = 2;
    private static final int PACKS = 1;

    private final IntegerProgramme programme;
    private final List<Offer> offers;
    private final Map<String, Supplier> suppliers;
    private final List<Step> steps = new ArrayList<>();
    private final Linear goods = new Linear();
    private final Linear delivery = new Linear();
    private final TaxRows tax;

    /**
     * Adds the variables and rows.
     *
     * @param needs most modules of each offer's kind that are of use, spares among them, in the order of offers; empty
     *              where the kind is of no use to anybody
     * @param rules what is taxed
     */
    Purchasing(
            IntegerProgramme programme,
            List<Offer> offers,
            Map<String, Supplier> suppliers,
            List<OptionalLong> needs,
            Tax rules) {
        this.programme = programme;
        this.offers = offers;
        this.suppliers = suppliers;
        this.tax = new TaxRows(programme, percents(offers, rules));
        for (int offer = 0; offer < offers.size(); offer++) {
            addOffer(offer, mostPacks(offers.get(offer), needs.get(offer)));
        }
        steps.forEach(step -> goods.add(step.price(1), 1));
        Map<String, Linear> values = new LinkedHashMap<>();
        steps.forEach(step -> values.computeIfAbsent(offers.get(step.offer()).supplier(), unused -> new Linear())
                .add(step.price(1), 1));
        values.forEach((supplier, value) -> {
            Linear charge = addTerms(suppliers.get(supplier), value);
            delivery.add(charge, 1);
            if (rules.inBudgets()) {
                tax.add(supplier, taxed(supplier, charge, rules));
            }
        });
    }

    static List<Percent> percents(List<Offer> offers, Tax rules) {
        return Stream.concat(Stream.of(rules.onDelivery()), offers.stream().map(rules::on)).distinct().toList();
    }

    private Linear taxed(String supplier, Linear charge, Tax rules) {
        Linear taxed = new Linear().add(charge, tax.parts(rules.onDelivery()));
        for (Step step : steps) {
            Offer offer = offers.get(step.offer());
            if (offer.supplier().equals(supplier)) {
                taxed.add(step.price(tax.parts(rules.on(offer))), 1);
            }
        }
        return taxed;
    }

    /** More can't be of use: not for the machines, not for a better price step, not for the supplier's terms. */
    private long mostPacks(Offer offer, OptionalLong need) {
        if (need.isEmpty()) {
            return 0;
        }
        long packs = offer.packsFor(need.getAsLong());
        if (packs > 0 && offer.rule() == PriceRule.ALL_PACKS) {
            packs = Math.max(packs, offer.steps().get(offer.steps().size() - 1).fromPacks());
        }
        Supplier supplier = suppliers.get(offer.supplier());
        long cheapest = offer.steps().stream().mapToLong(step -> step.perPack().minor()).min().orElseThrow();
        long terms = Math.max(minor(supplier.minimum()), minor(supplier.freeFrom()));
        if (cheapest > 0) {
            packs = Math.max(packs, -Math.floorDiv(-terms, cheapest));
        }
        return offer.stock().isPresent() ? Math.min(packs, offer.stock().getAsInt()) : packs;
    }

    private void addOffer(int number, long most) {
        Offer offer = offers.get(number);
        List<PriceSpan> spans = PriceSpan.of(offer, most);
        Linear chosen = new Linear();
        for (PriceSpan span : spans) {
            String name = "packs of %s from %d".formatted(offer.id(), span.low());
            int packs = programme.variable(name, 0, span.high(), PACKS);
            int choice = spans.size() > 1 ? programme.choice("price of " + name, PRICES) : -1;
            steps.add(new Step(number, span, packs, choice));
            if (choice >= 0) {
                chosen.add(choice, 1);
                programme.atMost(name, new Linear().add(packs, 1).add(choice, -span.high()), 0);
                programme.atLeast(name, new Linear().add(packs, 1).add(choice, -span.low()), 0);
            }
        }
        if (!chosen.isEmpty()) {
            programme.atMost("one price of " + offer.id(), chosen, 1);
        }
    }

    /** The rows for a supplier's terms; returns what delivery costs. */
    private Linear addTerms(Supplier supplier, Linear value) {
        Linear delivery = new Linear();
        long charge = minor(supplier.shipping());
        long minimum = minor(supplier.minimum());
        if (charge == 0 && minimum == 0) {
            return delivery;
        }
        int used = programme.choice("order from " + supplier.name(), SUPPLIERS);
        for (Step step : steps) {
            if (offers.get(step.offer()).supplier().equals(supplier.name())) {
                long high = programme.high(step.variable());
                programme.joinAtMost("order from " + supplier.name(),
                        new Linear().add(step.variable(), 1).add(used, -high), 0);
            }
        }
        programme.joinAtLeast("smallest order from " + supplier.name(),
                new Linear().add(value, 1).add(used, -minimum), 0);
        delivery.add(used, charge);
        if (charge > 0 && supplier.freeFrom().isPresent()) {
            int free = programme.choice("free delivery from " + supplier.name(), SUPPLIERS);
            programme.atMost("free delivery from " + supplier.name(), new Linear().add(free, 1).add(used, -1), 0);
            programme.joinAtLeast("free delivery from " + supplier.name(),
                    new Linear().add(value, 1).add(free, -minor(supplier.freeFrom())), 0);
            delivery.add(free, -charge);
        }
        return delivery;
    }

    private static long minor(Optional<Money> money) {
        return money.map(Money::minor).orElse(0L);
    }

    List<Step> steps() {
        return steps;
    }

    /** Modules bought with an offer. */
    Linear modules(int offer) {
        Linear modules = new Linear();
        steps.stream().filter(step -> step.offer() == offer)
                .forEach(step -> modules.add(step.variable(), offers.get(offer).packSize()));
        return modules;
    }

    /** Packs bought with an offer. */
    Linear packs(int offer) {
        Linear packs = new Linear();
        steps.stream().filter(step -> step.offer() == offer).forEach(step -> packs.add(step.variable(), 1));
        return packs;
    }

    /** All packs. */
    Linear packs() {
        Linear packs = new Linear();
        steps.forEach(step -> packs.add(step.variable(), 1));
        return packs;
    }

    /** Minor units for goods and delivery, tax left out. */
    Linear payable() {
        return new Linear().add(goods, 1).add(delivery, 1);
    }

    /** What a budget limits: the same, with tax where budgets are meant so. */
    Linear againstBudget() {
        return payable().add(tax.all(), 1);
    }

    int[] packs(long[] values) {
        int[] packs = new int[offers.size()];
        steps.forEach(step -> packs[step.offer()] += Math.toIntExact(values[step.variable()]));
        return packs;
    }
}
