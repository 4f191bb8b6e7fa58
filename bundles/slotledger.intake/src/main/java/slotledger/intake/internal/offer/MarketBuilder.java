package slotledger.intake.internal.offer;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.Consumer;
import slotledger.intake.internal.table.Column;
import slotledger.intake.internal.table.Field;
import slotledger.intake.internal.table.Table;
import slotledger.intake.internal.table.TableRow;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.finding.Finding;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Money;

/** Joins lines to offers and collects the terms of suppliers. */
final class MarketBuilder {

    private final Consumer<Finding> findings;
    private final Map<String, List<OfferLine>> lines = new LinkedHashMap<>();
    private final Set<Table> assumed = Collections.newSetFromMap(new IdentityHashMap<>());
    private final Map<String, Map<Field, Money>> terms = new LinkedHashMap<>();

    MarketBuilder(Consumer<Finding> findings) {
        this.findings = findings;
    }

    void add(OfferLine line) {
        String id = line.supplier() + "/" + (line.part().isEmpty()
                ? "row " + (line.row().table().sheet() + " " + line.row().number()).strip() : line.part());
        lines.computeIfAbsent(id, key -> new ArrayList<>()).add(line);
        terms.computeIfAbsent(line.supplier(), key -> new LinkedHashMap<>());
    }

    /** Takes what a row says of its supplier's charges. */
    void terms(String supplier, TableRow row, MoneyReader money) {
        Map<Field, Money> known = terms.computeIfAbsent(supplier, key -> new LinkedHashMap<>());
        for (Field field : List.of(Field.SHIPPING, Field.FREE_FROM, Field.MINIMUM_ORDER)) {
            Optional<Column> column = row.table().column(field);
            Optional<Money> amount = column.filter(known1 -> row.text(known1).matches("(?s).*\\d.*"))
                    .flatMap(place -> money.read(row, place));
            if (amount.isEmpty()) {
                continue;
            }
            Money before = known.putIfAbsent(field, amount.get());
            if (before != null && !before.equals(amount.get())) {
                findings.accept(Doubt.warning("terms-differ",
                        "For supplier %s %s was given before as %s; the first is used."
                        .formatted(supplier, field.id().replace('-', ' '), before), "the same terms in every row",
                        "Correct the row.").at(row.place(field), row.text(field)));
            }
        }
    }

    Market build() {
        List<Offer> offers = new ArrayList<>();
        lines.forEach((id, same) -> offer(id, same).ifPresent(offers::add));
        Map<String, Supplier> suppliers = new LinkedHashMap<>();
        terms.forEach((name, known) -> suppliers.put(name,
                new Supplier(name, Optional.ofNullable(known.get(Field.SHIPPING)),
                Optional.ofNullable(known.get(Field.FREE_FROM)), Optional.ofNullable(known.get(Field.MINIMUM_ORDER)))));
        return new Market(offers, suppliers);
    }

    private Optional<Offer> offer(String id, List<OfferLine> same) {
        OfferLine first = same.get(0);
        SortedMap<Integer, Money> prices = new TreeMap<>(first.prices());
        for (OfferLine line : same.subList(1, same.size())) {
            boolean step = line.piece().equals(first.piece()) && line.packSize() == first.packSize()
                    && line.prices().keySet().stream().noneMatch(prices::containsKey)
                    && line.prices().values().iterator().next().currency()
                            .equals(first.prices().values().iterator().next().currency());
            if (step) {
                prices.putAll(line.prices());
            } else {
                findings.accept(Doubt.error("duplicate-offer", "%s stands already in row %d; this row was left out."
                        .formatted(id, first.row().number()),
                                "every part of a supplier once, or once for each quantity",
                        "Delete the row that is out of date.").at(line.row().place(Field.PART), line.row().shown()));
            }
        }
        return offer(id, first, prices);
    }

    private Optional<Offer> offer(String id, OfferLine first, SortedMap<Integer, Money> prices) {
        if (prices.firstKey() != 1) {
            findings.accept(Doubt.error("no-price-for-one",
                    "There is no price for fewer than %d packs; the row was left out."
                    .formatted(prices.firstKey()), "a price for one pack",
                            "Ask the supplier for the price of one pack.")
                    .at(first.row().place(), first.row().shown()));
            return Optional.empty();
        }
        List<PriceStep> steps = new ArrayList<>();
        for (Map.Entry<Integer, Money> price : prices.entrySet()) {
            if (!steps.isEmpty() && steps.get(steps.size() - 1).perPack().compareTo(price.getValue()) < 0) {
                findings.accept(Doubt.warning("price-rises", "From %d packs on the price is higher than before."
                        .formatted(price.getKey()), "a lower price for more packs", "Check the prices.")
                        .at(first.row().place(), first.row().shown()));
            }
            steps.add(new PriceStep(price.getKey(), price.getValue()));
        }
        return Optional.of(new Offer(id, first.supplier(), first.part(), first.maker(), first.piece(),
                first.packSize(), steps, rule(first, steps), first.stock(), first.leadDays(), first.priceDate(),
                first.validUntil(), first.tax(), first.row().place()));
    }

    /** Where several prices stand and nobody says what they hold for, they hold for all packs; said once a table. */
    private PriceRule rule(OfferLine first, List<PriceStep> steps) {
        if (steps.size() > 1 && first.rule().isEmpty() && assumed.add(first.row().table())) {
            findings.accept(Doubt.note("price-rule-assumed",
                    "Prices from a quantity on were taken to hold for all packs ordered.",
                    "a column \"price rule\" with \"all packs\" or \"further packs\"",
                    "Ask the supplier; write \"further packs\" where each price holds only for the packs from its"
                            + " quantity on.").at(first.row().place(), first.row().shown()));
        }
        return first.rule().orElse(PriceRule.ALL_PACKS);
    }
}
