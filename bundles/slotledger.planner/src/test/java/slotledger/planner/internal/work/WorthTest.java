package slotledger.planner.internal.work;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.Station;
import slotledger.model.source.Place;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceStep;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;

class WorthTest {

    private static final Currency EUR = Currency.getInstance("EUR");

    private static ModuleKind kind(int gib) {
        return ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(gib));
    }

    private static Offer offer(String part, int gib, int packSize, long cents) {
        return new Offer("Alder/" + part, "Alder", part, kind(gib), packSize,
                List.of(new PriceStep(1, new Money(cents, EUR))), OptionalInt.empty(), OptionalInt.empty(),
                Optional.empty(), Optional.empty(), Place.NOWHERE);
    }

    private static Optional<Money> worth(int gib, int count) {
        Worth worth = new Worth(List.of(offer("single", 8, 1, 2000), offer("kit", 8, 3, 5000)));
        return worth.of(List.of(new Leftover(SlotContent.of(kind(gib)), count, Leftover.Origin.PULLED,
                new Station.OnShelf()))).get(0).worth();
    }

    @Test
    void leftoversAreWorthWhatTheCheapestOfferAsksForAsMany() {
        assertEquals(Optional.of(new Money(11_666, EUR)), worth(8, 7));
    }

    @Test
    void whatNobodyOffersIsOfUnknownWorth() {
        assertEquals(Optional.empty(), worth(16, 1));
    }
}
