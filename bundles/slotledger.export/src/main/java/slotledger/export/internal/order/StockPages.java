package slotledger.export.internal.order;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import slotledger.export.PlanBook;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.Words;
import slotledger.model.finding.Finding;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.trade.Offer;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;

/** Spares that are bought, and offers that were looked at. */
final class StockPages {

    /** So many rows stay readable on one page of paper. */
    private static final int ON_ONE_PAGE = 36;

    /** Codes of the plan's remarks on offers it could not use. */
    private static final Map<String, String> LEFT_OUT = Map.of(
            "offer-forbidden", "forbidden by choice",
            "offer-too-late", "too late for the needed-by date",
            "offer-expired", "not valid any more",
            "offer-currency", "another currency",
            "offer-fits-no-board", "fits no board");

    private StockPages() {
    }

    static void spares(PlanBook book, Page page, List<SupplierPage> suppliers) {
        page.title("Spares and rests of packs");
        page.note("The policy asks for %d %% spares of each kind bought%s."
                .formatted(book.plan().policy().sparePercent(),
                        book.plan().policy().atLeastOneSpare() ? ", at least one" : ""));
        page.gap();
        page.header("Supplier", "Part number", "Module", "Spares by policy", "Over, since packs are whole", "Cost");
        int first = page.rowNumber() + 1;
        BigDecimal sum = BigDecimal.ZERO;
        for (SupplierPage supplier : suppliers) {
            for (Purchase purchase : supplier.purchases()) {
                if (purchase.spares() + purchase.over() > 0) {
                    BigDecimal cost = purchase.total().amount()
                            .multiply(BigDecimal.valueOf(purchase.spares() + purchase.over()))
                            .divide(BigDecimal.valueOf(purchase.modules()), MathContext.DECIMAL64);
                    page.next().text(0, purchase.offer().supplier()).text(1, purchase.offer().part())
                            .text(2, purchase.offer().piece().toString())
                            .count(3, purchase.spares()).count(4, purchase.over());
                    page.formula(5, "(%s+%s)*%s".formatted(page.here(3), page.here(4),
                            supplier.line(purchase).perModule()), cost, Look.MONEY);
                    sum = sum.add(cost);
                }
            }
        }
        int last = page.rowNumber();
        if (last < first) {
            page.next().text(0, "No module is bought beyond what the machines take.");
            return;
        }
        page.next().text(0, "All", Look.STRONG);
        page.formula(5, "SUM(" + Page.range(first, last, 5) + ")", sum, Look.MONEY_STRONG);
    }

    static void considered(PlanBook book, Page page) {
        Map<String, Integer> bought = new HashMap<>();
        book.plan().purchases().forEach(purchase ->
                bought.merge(purchase.offer().id(), purchase.packs(), Integer::sum));
        page.title("Offers considered");
        page.note("Every offer that was read, by size and by price of one module at the smallest quantity.");
        page.gap();
        List<Finding> remarks = book.plan().remarks().stream()
                .filter(remark -> LEFT_OUT.containsKey(remark.code())).toList();
        page.header("Chosen", "Supplier", "Part number", "Module", "Modules a pack", "Price a pack", "Price a module",
                "Packs ordered", "Packs in stock", "Delivery, days", "Valid until", "Price rule",
                "Quoted, and rate used", "Read from");
        Comparator<Offer> bySize =
                Comparator.comparing(offer -> offer.piece().capacity(), Comparator.<Capacity>reverseOrder());
        List<Offer> offers = book.market().offers().stream()
                .sorted(bySize
                        .thenComparing(offer -> Words.brief(offer.piece()))
                        .thenComparing(StockPages::perModule)
                        .thenComparing(Offer::id))
                .toList();
        for (Offer offer : offers) {
            int packs = bought.getOrDefault(offer.id(), 0);
            Money price = offer.steps().get(0).perPack();
            page.next().text(0, packs > 0 ? "yes" : whyNot(offer, remarks), packs > 0 ? Look.STRONG : Look.TEXT)
                    .text(1, offer.supplier()).text(2, offer.part()).text(3, offer.piece().toString())
                    .count(4, offer.packSize());
            if (price.currency().equals(book.plan().policy().currency())) {
                page.money(5, price);
                page.formula(6, page.here(5) + "/" + page.here(4), perModule(offer), Look.MONEY);
            } else {
                page.text(5, price.toString()).text(6, "another currency");
            }
            page.count(7, packs);
            offer.stock().ifPresentOrElse(stock -> page.count(8, stock), () -> page.text(8, "not limited"));
            offer.leadDays().ifPresentOrElse(days -> page.count(9, days), () -> page.text(9, "not known"));
            page.date(10, offer.validUntil())
                    .text(11, offer.steps().size() == 1 ? "one price" : offer.rule().text())
                    .text(12, quoted(offer, book.plan())).text(13, offer.place().toString());
        }
        page.filter(14);
        if (offers.size() <= ON_ONE_PAGE) {
            page.onOnePage();
        }
    }

    /** Why the plan could not use an offer, as its remarks say: they speak of the place it was read at, and name it. */
    private static String whyNot(Offer offer, List<Finding> remarks) {
        return remarks.stream()
                .filter(remark -> remark.place().equals(offer.place())
                        && remark.message().contains(offer.id() + " "))
                .findFirst().map(remark -> LEFT_OUT.get(remark.code())).orElse("no");
    }

    /** "USD 12.00 at 0.92 of 2026-11-02". */
    private static String quoted(Offer offer, Plan plan) {
        return offer.steps().get(0).quoted().map(price -> price + plan.policy().buying().rate(price.currency())
                .map(rate -> " at " + rate).orElse("")).orElse("");
    }

    private static BigDecimal perModule(Offer offer) {
        return offer.steps().get(0).perPack().amount()
                .divide(BigDecimal.valueOf(offer.packSize()), MathContext.DECIMAL64);
    }
}
