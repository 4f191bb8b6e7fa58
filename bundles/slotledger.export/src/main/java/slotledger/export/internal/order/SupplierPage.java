package slotledger.export.internal.order;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.LocalDate;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.stream.Collectors;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.Texts;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.Purchase;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Supplier;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Money;

/** What is ordered of one supplier. Quantities and prices can be changed; all totals follow. */
final class SupplierPage {

    /** Cells of one line that other sheets refer to. */
    record Line(String modules, String perModule, String total) {}

    private static final int PACK_SIZE = 3;
    private static final int PACKS = 4;
    private static final int LABEL = PACKS;
    private static final int MODULES = 5;
    private static final int PER_PACK = 6;
    private static final int TOTAL = 7;
    private static final int PER_MODULE = 8;
    private static final int TAX = 14;

    /** Common practice of the trade, no source. */
    private static final String USED_STOCK = "FPM and EDO modules are no longer sold new: this is used stock, and lots "
            + "differ. Ask for the modules of a bank as a matched set from one lot, test them on arrival, keep spares.";

    private final Supplier supplier;
    private final List<Purchase> purchases;
    private final Money delivery;
    private final Optional<Money> tax;
    private final Tax rules;
    private final Page page;
    private final Map<Purchase, Line> lines = new HashMap<>();
    private String goodsCell;
    private String deliveryCell;
    private String totalCell;
    private String taxCell;

    SupplierPage(Book book, Supplier supplier, List<Purchase> purchases, Money delivery,
            Optional<Money> tax, Tax rules) {
        this.tax = tax;
        this.rules = rules;
        this.supplier = supplier;
        this.purchases = purchases;
        this.delivery = delivery;
        this.page = book.page("Order " + supplier.name(), 6, 13, 36, 10, 9, 9, 14, 16, 13, 9, 10, 12, 12, 26, 8);
        fill();
    }

    Line line(Purchase purchase) {
        return lines.get(purchase);
    }

    Supplier supplier() {
        return supplier;
    }

    List<Purchase> purchases() {
        return purchases;
    }

    Money goods() {
        return purchases.stream().map(Purchase::total).reduce(Money.zero(delivery.currency()), Money::plus);
    }

    Money delivery() {
        return delivery;
    }

    String goodsCell() {
        return page.outside(goodsCell);
    }

    String deliveryCell() {
        return page.outside(deliveryCell);
    }

    String totalCell() {
        return page.outside(totalCell);
    }

    /** What tax is on the order; empty where nothing is known of tax. */
    Optional<Money> tax() {
        return tax;
    }

    String taxCell() {
        return page.outside(taxCell);
    }

    private void fill() {
        page.title("Order to " + supplier.name());
        page.note(terms());
        if (purchases.stream().map(Purchase::offer).anyMatch(SupplierPage::isUsedStock)) {
            page.note(USED_STOCK);
        }
        page.note("Prices without tax. Cells with a thick border may be changed: lines, totals and the other sheets "
                + "follow. Another price step is not chosen by itself: see the last column.");
        page.gap();
        page.header("Line", "Part number", "Module", "Modules a pack", "Packs", "Modules", "Price a pack",
                "Line total", "Price a module", "Packs in stock", "Delivery, days", "Price of", "Valid until",
                "Price steps", tax.isPresent() ? "Tax, %" : "");
        int first = page.rowNumber() + 1;
        for (Purchase purchase : purchases) {
            write(purchase);
        }
        totals(first, page.rowNumber());
    }

    private static boolean isUsedStock(Offer offer) {
        return SlotContent.of(offer.piece()).module().flatMap(ModuleKind::generation)
                .filter(known -> known == Generation.FPM || known == Generation.EDO).isPresent();
    }

    /** "Prices hold until 2026-12-31. Delivery within 7 days." */
    private String terms() {
        List<Offer> offers = purchases.stream().map(Purchase::offer).toList();
        String days = longestDelivery().isPresent()
                ? " Delivery within " + Texts.count(longestDelivery().getAsInt(), "day", "days") + "."
                : " Ask for the delivery time.";
        return validUntil().map(day -> "Prices hold until " + day + ".")
                .orElse(offers.stream().allMatch(offer -> offer.validUntil().isEmpty())
                        ? "No last day of the prices is known: ask before ordering."
                        : "Some prices have no last day: ask before ordering.") + days;
    }

    /** The first day a price ends; empty where a price has no last day. */
    Optional<LocalDate> validUntil() {
        boolean all = purchases.stream().allMatch(purchase -> purchase.offer().validUntil().isPresent());
        return purchases.stream().flatMap(purchase -> purchase.offer().validUntil().stream())
                .min(Comparator.naturalOrder()).filter(day -> all);
    }

    /** Days until the last line arrives; empty where that of a line is not known. */
    OptionalInt longestDelivery() {
        boolean all = purchases.stream().allMatch(purchase -> purchase.offer().leadDays().isPresent());
        OptionalInt longest = purchases.stream().flatMapToInt(purchase -> purchase.offer().leadDays().stream()).max();
        return all ? longest : OptionalInt.empty();
    }

    private void write(Purchase purchase) {
        Offer offer = purchase.offer();
        page.next()
                .count(0, lines.size() + 1)
                .text(1, offer.part())
                .text(2, offer.piece().toString())
                .count(PACK_SIZE, offer.packSize())
                .number(PACKS, purchase.packs(), Look.COUNT_INPUT);
        page.formula(MODULES, page.here(PACK_SIZE) + "*" + page.here(PACKS),
                BigDecimal.valueOf(purchase.modules()), Look.COUNT);
        price(purchase);
        BigDecimal perModule = purchase.total().amount()
                .divide(BigDecimal.valueOf(purchase.modules()), MathContext.DECIMAL64);
        page.formula(PER_MODULE, page.here(PER_PACK) + "/" + page.here(PACK_SIZE), perModule, Look.MONEY);
        if (offer.stock().isPresent()) {
            page.count(9, offer.stock().getAsInt());
        } else {
            page.text(9, "not limited");
        }
        if (offer.leadDays().isPresent()) {
            page.count(10, offer.leadDays().getAsInt());
        } else {
            page.text(10, "not known");
        }
        page.date(11, offer.priceDate()).date(12, offer.validUntil()).text(13, steps(offer));
        if (tax.isPresent()) {
            page.number(TAX, rules.on(offer).value().doubleValue(), Look.COUNT);
        }
        lines.put(purchase, new Line(page.outside(page.here(MODULES)), page.outside(page.here(PER_MODULE)),
                page.outside(page.here(TOTAL))));
    }

    private void price(Purchase purchase) {
        Offer offer = purchase.offer();
        if (offer.rule() == PriceRule.ALL_PACKS || offer.steps().size() == 1) {
            page.number(PER_PACK, offer.perPack(purchase.packs()).amount().doubleValue(), Look.MONEY_INPUT);
            page.formula(TOTAL, page.here(PACKS) + "*" + page.here(PER_PACK), purchase.total(), Look.MONEY);
            return;
        }
        BigDecimal average = purchase.total().amount()
                .divide(BigDecimal.valueOf(purchase.packs()), MathContext.DECIMAL64);
        page.formula(PER_PACK, "IF(%1$s=0,0,%2$s/%1$s)".formatted(page.here(PACKS), page.here(TOTAL)), average,
                Look.MONEY);
        page.formula(TOTAL, furtherPacks(offer, page.here(PACKS)), purchase.total(), Look.MONEY);
    }

    /** All packs at the first price, and from each further quantity on the difference to the price before. */
    private static String furtherPacks(Offer offer, String packs) {
        StringBuilder formula = new StringBuilder("ROUND(");
        BigDecimal before = BigDecimal.ZERO;
        for (PriceStep step : offer.steps()) {
            BigDecimal more = step.perPack().amount().subtract(before);
            formula.append(before.signum() == 0 && step.fromPacks() == 1 ? "" : "+")
                    .append("(%s)*MAX(0,%s-%d)".formatted(more.toPlainString(), packs, step.fromPacks() - 1));
            before = step.perPack().amount();
        }
        return formula.append(",%d)".formatted(offer.currency().getDefaultFractionDigits())).toString();
    }

    private void totals(int first, int last) {
        page.next().text(TOTAL - 1, "Goods", Look.STRONG);
        String packs = "SUM(" + Page.range(first, last, MODULES) + ")";
        int modules = purchases.stream().mapToInt(Purchase::modules).sum();
        page.formula(MODULES, packs, BigDecimal.valueOf(modules), Look.COUNT_STRONG);
        String modulesCell = page.here(MODULES);
        page.formula(TOTAL, "SUM(" + Page.range(first, last, TOTAL) + ")", goods(), Look.MONEY_STRONG);
        goodsCell = page.here(TOTAL);

        int terms = page.rowNumber() + 5 + (tax.isPresent() ? 2 : 0);
        String charge = Page.at(terms, TOTAL);
        String freeFrom = Page.at(terms + 1, TOTAL);
        String minimum = Page.at(terms + 2, TOTAL);
        page.next().text(TOTAL - 1, "Delivery", Look.STRONG);
        page.formula(TOTAL,
                "IF(%4$s=0,0,IF(AND(ISNUMBER(%2$s),%1$s>=%2$s),0,%3$s))"
                        .formatted(goodsCell, freeFrom, charge, modulesCell),
                delivery, Look.MONEY);
        deliveryCell = page.here(TOTAL);
        page.next().text(TOTAL - 1, "Total", Look.STRONG);
        page.formula(TOTAL, goodsCell + "+" + deliveryCell, goods().plus(delivery), Look.MONEY_STRONG);
        totalCell = page.here(TOTAL);
        tax.ifPresent(amount -> tax(amount, first, last));

        page.gap();
        page.section("Terms of the supplier");
        Money nothing = Money.zero(delivery.currency());
        page.next().text(LABEL, TOTAL - 1, "Charge for one delivery");
        page.number(TOTAL, supplier.shipping().orElse(nothing).amount().doubleValue(), Look.MONEY_INPUT);
        term("Delivery is free from an order value of", supplier.freeFrom(), "none named");
        term("Smallest order value", supplier.minimum(), "none named");
        page.next().text(LABEL, TOTAL - 1, "Is the order large enough?");
        boolean enough = supplier.minimum().map(least -> goods().compareTo(least) >= 0).orElse(true);
        page.formula(TOTAL, "IF(AND(ISNUMBER(%1$s),%2$s<%1$s),\"no\",\"yes\")".formatted(minimum, goodsCell),
                enough ? "yes" : "no", Look.STRONG);

        page.gap();
        for (String name : List.of("Our order number", "Ordered on", "Ordered by")) {
            page.next().text(0, 1, name).text(2, "");
        }
    }

    /** Tax of goods and delivery together, rounded once. */
    private void tax(Money amount, int first, int last) {
        page.next().text(LABEL, TOTAL - 1, "Tax, rounded once for the order");
        page.formula(TOTAL, "ROUND((SUMPRODUCT(%s,%s)+%s*%s)/100,%d)".formatted(
                Page.range(first, last, TOTAL), Page.range(first, last, TAX), deliveryCell,
                rules.onDelivery().value().toPlainString(), amount.currency().getDefaultFractionDigits()),
                amount, Look.MONEY);
        taxCell = page.here(TOTAL);
        page.next().text(TOTAL - 1, "With tax", Look.STRONG);
        page.formula(TOTAL, totalCell + "+" + taxCell, goods().plus(delivery).plus(amount), Look.MONEY_STRONG);
    }

    private void term(String name, Optional<Money> value, String otherwise) {
        page.next().text(LABEL, TOTAL - 1, name);
        if (value.isPresent()) {
            page.number(TOTAL, value.get().amount().doubleValue(), Look.MONEY_INPUT);
        } else {
            page.text(TOTAL, otherwise);
        }
    }

    private static String steps(Offer offer) {
        if (offer.steps().size() == 1) {
            return "one price for any quantity"
                    + offer.steps().get(0).quoted().map(quoted -> " (" + quoted + ")").orElse("");
        }
        return offer.steps().stream()
                .map(step -> "from " + Texts.count(step.fromPacks(), "pack", "packs") + ": " + step.perPack()
                        + step.quoted().map(quoted -> " (" + quoted + ")").orElse(""))
                .collect(Collectors.joining("\n",
                        offer.rule() == PriceRule.FURTHER_PACKS ? "each for the packs from there on\n" : "", ""));
    }
}
