package slotledger.export.internal.order;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.export.ExportException;
import slotledger.export.PlanBook;
import slotledger.export.internal.difference.DifferencePage;
import slotledger.export.internal.sheet.Book;
import slotledger.export.internal.sheet.ListPages;
import slotledger.export.internal.sheet.Page;
import slotledger.export.internal.text.WholeFile;
import slotledger.model.difference.Difference;
import slotledger.model.plan.Purchase;
import slotledger.model.task.Progress;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Money;

/** The order workbook. */
public final class OrderBook {

    private static final int[] SUMMARY_WIDTHS = {50, 16, 14, 16, 14, 11, 16, 14};
    private static final int[] CENTRE_WIDTHS = {40, 18, 18, 18, 14};
    private static final int[] ALLOCATION_WIDTHS = {22, 13, 17, 17, 30, 18, 10, 14, 12};
    private static final int[] SPARES_WIDTHS = {24, 16, 74, 11, 14, 14};
    private static final int[] ALONE_WIDTHS = {54, 20, 22, 22};
    private static final int[] CONSIDERED_WIDTHS = {14, 22, 13, 42, 9, 13, 13, 9, 9, 10, 12, 12, 20, 30};

    private final PlanBook book;
    private final Progress progress;

    public OrderBook(PlanBook book, Progress progress) {
        this.book = book;
        this.progress = progress;
    }

    public void write(Path file) throws ExportException {
        WholeFile.write(file, out -> {
            try (Book workbook = new Book("Memory order: " + book.plan().title(), book.plan().policy().currency())) {
                fill(workbook);
                progress.check();
                workbook.save(out);
            }
        });
    }

    private void fill(Book workbook) throws IOException {
        Page summary = workbook.page("Summary", SUMMARY_WIDTHS);
        List<SupplierPage> suppliers = suppliers(workbook);
        step("orders", 0.2);
        new AllocationPage(book, workbook.page("Cost centres", CENTRE_WIDTHS),
                workbook.page("Allocation", ALLOCATION_WIDTHS), suppliers).fill();
        step("allocation", 0.4);
        StockPages.spares(book, workbook.page("Spares", SPARES_WIDTHS), suppliers);
        StockPages.considered(book, workbook.page("Considered", CONSIDERED_WIDTHS));
        book.plan().insights().alone().ifPresent(alone -> new AlonePage(
                book.plan(), alone, workbook.page("Machine by machine", ALONE_WIDTHS), suppliers).fill());
        ListPages.leftovers(workbook, book);
        ListPages.notHelped(workbook, book);
        DecisionsPage.add(workbook, book.plan());
        book.before().ifPresent(before -> DifferencePage.add(workbook, Difference.of(before, book.plan())));
        new WhatBindsPage(book, workbook.page("What binds", WhatBindsPage.WIDTHS)).fill();
        new SummaryPage(book, summary, suppliers).fill();
        step("formulas", 0.7);
    }

    private List<SupplierPage> suppliers(Book workbook) {
        Map<String, List<Purchase>> bySupplier = new LinkedHashMap<>();
        for (Purchase purchase : book.plan().purchases()) {
            bySupplier.computeIfAbsent(purchase.offer().supplier(), name -> new ArrayList<>()).add(purchase);
        }
        Money nothing = Money.zero(book.plan().policy().currency());
        Map<String, Money> charged = book.plan().spending().delivery();
        List<SupplierPage> pages = new ArrayList<>();
        bySupplier.forEach((name, purchases) -> {
            Money delivery = charged.getOrDefault(name, nothing);
            pages.add(new SupplierPage(workbook, terms(name, purchases, delivery), purchases, delivery,
                    Optional.ofNullable(book.plan().spending().tax().get(name)),
                    book.plan().policy().buying().tax()));
        });
        return pages;
    }

    /** The supplier's terms; where they have changed since the plan was made, what the plan reckoned with. */
    private Supplier terms(String name, List<Purchase> purchases, Money delivery) {
        Supplier known = book.market().suppliers().get(name);
        return known != null && charge(known, purchases).equals(delivery) ? known
                : new Supplier(name, Optional.of(delivery), Optional.empty(), Optional.empty());
    }

    private static Money charge(Supplier supplier, List<Purchase> purchases) {
        Money none = Money.zero(purchases.get(0).total().currency());
        Money goods = purchases.stream().map(Purchase::total).reduce(none, Money::plus);
        boolean free = supplier.freeFrom()
                .filter(from -> from.currency().equals(goods.currency()) && goods.compareTo(from) >= 0)
                .isPresent();
        return free ? none : supplier.shipping().orElse(none);
    }

    private void step(String what, double done) {
        progress.check();
        progress.step("order workbook: " + what, done);
    }
}
