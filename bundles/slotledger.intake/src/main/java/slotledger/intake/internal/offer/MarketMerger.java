package slotledger.intake.internal.offer;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.intake.Reading;
import slotledger.intake.internal.value.Doubt;
import slotledger.model.finding.Finding;
import slotledger.model.observed.TableUse;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Supplier;

/** Makes one market of several files. */
public final class MarketMerger {

    private final Map<String, Offer> offers = new LinkedHashMap<>();
    private final Map<String, Supplier> suppliers = new HashMap<>();
    private final List<TableUse> uses = new ArrayList<>();
    private final List<Finding> findings = new ArrayList<>();

    public void add(Reading<Market> reading) {
        uses.addAll(reading.columns());
        findings.addAll(reading.findings());
        reading.value().suppliers().forEach((name, supplier) -> suppliers.merge(name, supplier, MarketMerger::both));
        for (Offer offer : reading.value().offers()) {
            Offer first = offers.putIfAbsent(offer.id(), offer);
            if (first != null) {
                findings.add(Doubt.error("duplicate-offer", "%s stands already at %s; this row was left out."
                        .formatted(offer.id(), first.place()), "every part of a supplier once",
                        "Leave out the file or row that is out of date.").at(offer.place(), offer.id()));
            }
        }
    }

    private static Supplier both(Supplier first, Supplier second) {
        return new Supplier(first.name(), first.shipping().or(second::shipping), first.freeFrom().or(second::freeFrom),
                first.minimum().or(second::minimum));
    }

    public Reading<Market> merged() {
        List<Offer> all = List.copyOf(offers.values());
        Optional<Offer> other = all.stream().filter(offer -> !offer.steps().get(0).perPack().currency()
                .equals(all.get(0).steps().get(0).perPack().currency())).findFirst();
        other.ifPresent(offer -> findings.add(Doubt.warning("currencies-mixed",
                "The offers are in several currencies; those in another than the policy's can be bought only where"
                        + " the policy states what it is worth.",
                "one currency, or exchange rates in the policy",
                "Write \"exchange rates:\" into the policy, or ask for prices in its currency.")
                .at(offer.place(), offer.steps().get(0).perPack().toString())));
        return new Reading<>(new Market(all, suppliers), uses, findings);
    }
}
