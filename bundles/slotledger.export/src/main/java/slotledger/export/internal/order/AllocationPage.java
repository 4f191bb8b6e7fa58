package slotledger.export.internal.order;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import slotledger.export.PlanBook;
import slotledger.export.internal.sheet.Look;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.Texts;
import slotledger.export.internal.text.Words;
import slotledger.model.machine.Machine;
import slotledger.model.plan.Purchase;
import slotledger.model.unit.Money;

/**
 * Who pays for what: goods by cost centre on one sheet, machine by machine on another. What is no machine's
 * (spares, rests of packs, cents lost in dividing packs) is a row of its own for each order line, so that the sheet
 * adds up to the order.
 */
final class AllocationPage {

    private static final String NOBODY = "(no cost centre)";
    private static final String COMMON = "(spares and rests)";
    private static final int CENTRE = 0;
    private static final int MODULES = 6;
    private static final int AMOUNT = 7;
    private static final int CENTRE_NUMBER = 8;
    private static final int OWN_NUMBER = 4;
    private static final int FIRST_ROW = 4;

    /** One row: what a machine, or nobody, takes of an order line. */
    private record Share(
            String centre, Optional<Machine> machine, String tag, Purchase purchase, int modules, String amount,
            Money value) {}

    private final PlanBook book;
    private final Page sums;
    private final Page page;
    private final List<SupplierPage> suppliers;
    private final List<Share> shares = new ArrayList<>();
    private final Map<String, String> centres = new LinkedHashMap<>();
    /** By name, what nobody pays for alone last. */
    private final Map<String, Money> goods = new TreeMap<>(
            Comparator.<String, Boolean>comparing(key -> key.startsWith("(")).thenComparing(key -> key));

    /**
     * @param sums sheet for the sums by cost centre
     * @param page sheet for the machines
     */
    AllocationPage(PlanBook book, Page sums, Page page, List<SupplierPage> suppliers) {
        this.book = book;
        this.sums = sums;
        this.page = page;
        this.suppliers = suppliers;
    }

    void fill() {
        Money nothing = Money.zero(book.plan().policy().currency());
        book.plan().policy().costCentreBudgets().keySet().forEach(name -> sum(Texts.or(name, NOBODY), nothing));
        suppliers.forEach(supplier -> supplier.purchases().forEach(purchase -> share(supplier, purchase)));
        machines();
        centres(nothing);
    }

    private void machines() {
        page.title("Allocation to machines");
        page.note("Goods only, without delivery, labour and tax. Amounts follow the quantities and prices of the "
                + "orders; sheet Cost centres adds up by the number at the end of each row.");
        page.gap();
        page.header("Cost centre", "Machine", "Site", "Room", "Supplier and part", "Module", "Modules", "Amount",
                "Cost centre no.");
        if (page.rowNumber() + 1 != FIRST_ROW) {
            throw new IllegalStateException("The rows of the allocation must begin at %d, not %d."
                    .formatted(FIRST_ROW, page.rowNumber() + 1));
        }
        shares.forEach(this::row);
        page.filter(CENTRE_NUMBER + 1);
    }

    private void centres(Money nothing) {
        sums.title("Allocation to cost centres");
        sums.note("Goods only, without delivery, labour and tax.");
        sums.gap();
        sums.header("Cost centre", "Goods", "Budget", "Left", "Cost centre no.");
        goods.forEach(this::centre);
        sums.next().text(CENTRE, "All", Look.STRONG);
        sums.formula(1, "SUM(" + rows(AMOUNT) + ")", goods.values().stream().reduce(nothing, Money::plus),
                Look.MONEY_STRONG);
    }

    private void centre(String key, Money sum) {
        sums.next().text(CENTRE, centres.get(key)).count(OWN_NUMBER, number(key));
        // By number, not by name: SUMIF would read a name such as ">5" or "*" as a condition.
        sums.formula(1, "SUMIF(%s,%s,%s)".formatted(rows(CENTRE_NUMBER), sums.here(OWN_NUMBER), rows(AMOUNT)), sum,
                Look.MONEY);
        String here = sums.here(1);
        budget(key).ifPresent(budget -> {
            sums.number(2, budget.amount().doubleValue(), Look.MONEY_INPUT);
            sums.formula(3, sums.here(2) + "-" + here, budget.minus(sum), Look.MONEY);
        });
    }

    /** A column of all rows by machine. */
    private String rows(int column) {
        return page.outside(Page.range(FIRST_ROW, FIRST_ROW + Math.max(shares.size(), 1) - 1, column));
    }

    private Optional<Money> budget(String key) {
        return book.plan().policy().costCentreBudgets().entrySet().stream()
                .filter(entry -> key(Texts.or(entry.getKey(), NOBODY)).equals(key))
                .map(Map.Entry::getValue)
                .findFirst();
    }

    private void share(SupplierPage supplier, Purchase purchase) {
        SupplierPage.Line line = supplier.line(purchase);
        int digits = purchase.total().currency().getDefaultFractionDigits();
        BigDecimal size = BigDecimal.valueOf(purchase.modules());
        int begin = FIRST_ROW + shares.size();
        Money rest = purchase.total();
        for (Purchase.Use use : purchase.uses()) {
            BigDecimal amount = purchase.total().amount()
                    .multiply(BigDecimal.valueOf(use.modules()))
                    .divide(size, digits, RoundingMode.HALF_UP);
            Money value = Money.of(amount, rest.currency());
            String formula = "ROUND(%s*%s,%d)".formatted(
                    Page.at(FIRST_ROW + shares.size(), MODULES), line.perModule(), digits);
            add(new Share(Texts.or(use.costCentre(), NOBODY),
                    book.plan().find(use.machine()).map(plan -> plan.machine()),
                    use.machine().value(), purchase, use.modules(), formula, value));
            rest = rest.minus(value);
        }
        int end = FIRST_ROW + shares.size() - 1;
        String used = purchase.uses().isEmpty() ? "" : "-SUM(" + Page.range(begin, end, AMOUNT) + ")";
        add(new Share(COMMON, Optional.empty(), "", purchase, purchase.spares() + purchase.over(),
                line.total() + used, rest));
    }

    private void add(Share share) {
        shares.add(share);
        sum(share.centre(), share.value());
    }

    private void sum(String centre, Money value) {
        centres.putIfAbsent(key(centre), centre);
        goods.merge(key(centre), value, Money::plus);
    }

    /** Spreadsheet programs compare texts without regard to case. */
    private static String key(String centre) {
        return Texts.cell(centre).toLowerCase(Locale.ROOT);
    }

    private void row(Share share) {
        page.next()
                .text(CENTRE, share.centre())
                .text(1, share.tag())
                .text(2, share.machine().map(machine -> machine.where().site()).orElse(""))
                .text(3, share.machine().map(machine -> machine.where().room()).orElse(""))
                .text(4, share.purchase().offer().supplier() + ", " + share.purchase().offer().part())
                .text(5, Words.brief(share.purchase().offer().piece()))
                .count(MODULES, share.modules());
        page.formula(AMOUNT, share.amount(), share.value(), Look.MONEY);
        page.count(CENTRE_NUMBER, number(key(share.centre())));
    }

    private int number(String key) {
        return List.copyOf(goods.keySet()).indexOf(key) + 1;
    }
}
