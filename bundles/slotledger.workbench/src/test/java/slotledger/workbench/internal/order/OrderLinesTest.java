package slotledger.workbench.internal.order;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Spending;
import slotledger.model.source.Place;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceStep;
import slotledger.model.unit.Money;
import slotledger.workbench.internal.SmallFleet;
import slotledger.workbench.internal.lines.Line;
import slotledger.workbench.internal.session.Opened;

class OrderLinesTest {

    private static final Opened OPENED = SmallFleet.opened();
    private static final Purchase KITS = new Purchase(offer("North", "K2", 2, 4000, 3500), 5,
            List.of(new Purchase.Use(new AssetTag("PC-1"), "", 4), new Purchase.Use(new AssetTag("PC-2"), "", 4)),
            1, 1);
    private static final Purchase SINGLES = new Purchase(offer("South", "S1", 1, 2000, 2000), 1,
            List.of(new Purchase.Use(new AssetTag("PC-3"), "", 1)), 0, 0);

    @Test
    void eachSupplierIsAHeadingThatAddsItsLinesAndItsDelivery() {
        List<Line> lines = OrderLines.of(plan(KITS, SINGLES));
        assertEquals(List.of("North", "delivery EUR 9.00", "5", "10", "", "EUR 184.00"), lines.get(0).cells());
        assertEquals(List.of("South", "delivery free", "1", "1", "", "EUR 20.00"), lines.get(1).cells());
    }

    @Test
    void aLineHasThePriceItsQuantityReaches() {
        Line line = OrderLines.of(plan(KITS)).get(0).children().get(0);
        assertEquals(List.of("K2", SmallFleet.dimm(8).toString(), "5", "10", "EUR 35.00", "EUR 175.00", "2",
                "not known", "not known"), line.cells());
        assertEquals(Optional.of(new AssetTag("PC-1")), line.machine());
    }

    @Test
    void aLineInFullTellsItsPricesMachinesAndSpares() {
        assertEquals(SmallFleet.dimm(8) + ". Prices: from 1: EUR 40.00, from 5: EUR 35.00 (each for all packs).\n"
                        + "For PC-1, PC-2. 1 spares, 1 over because of the pack size.",
                OrderLines.of(plan(KITS)).get(0).children().get(0).inFull());
    }

    @Test
    void theSummaryTellsWhatIsToPay() {
        assertEquals("EUR 204.00 to pay: goods EUR 195.00, delivery EUR 9.00",
                OrderLines.summary(Optional.of(plan(KITS, SINGLES))));
    }

    @Test
    void anEmptyPartSaysWhatToDo() {
        assertEquals("No plan is made yet. Fleet > Plan finds what to buy.", OrderLines.summary(Optional.empty()));
        assertEquals("The plan buys nothing.", OrderLines.summary(Optional.of(plan())));
    }

    private static Plan plan(Purchase... purchases) {
        Money goods = List.of(purchases).stream().map(Purchase::total).reduce(euro(0), Money::plus);
        Map<String, Money> delivery = goods.isZero() ? Map.of() : Map.of("North", euro(900));
        Spending spending = new Spending(goods, delivery, euro(0), Map.of());
        Plan plain = SmallFleet.plan(OPENED);
        return new Plan(plain.title(), plain.date(), plain.policy(), List.of(), List.of(purchases), List.of(), spending,
                new Optimality(0, 0, spending.total(), spending.total(), "none", List.of(), false), List.of());
    }

    private static Offer offer(String supplier, String part, int pack, long single, long fromFive) {
        List<PriceStep> steps = single == fromFive ? List.of(new PriceStep(1, euro(single)))
                : List.of(new PriceStep(1, euro(single)), new PriceStep(5, euro(fromFive)));
        return new Offer(supplier + "/" + part, supplier, part, SmallFleet.dimm(8), pack, steps, OptionalInt.empty(),
                OptionalInt.empty(), Optional.empty(), Optional.empty(), Place.NOWHERE);
    }

    private static Money euro(long cents) {
        return new Money(cents, OPENED.survey().policy().orElseThrow().currency());
    }
}
