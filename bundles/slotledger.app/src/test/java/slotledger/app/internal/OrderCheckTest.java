package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;
import slotledger.app.DeskException;
import slotledger.model.delivery.OrderStatus;
import slotledger.model.delivery.Receipt;
import slotledger.model.delivery.TradeEvent;
import slotledger.model.delivery.TradeEvent.Approved;
import slotledger.model.delivery.TradeEvent.Confirmed;
import slotledger.model.delivery.TradeEvent.Drawn;
import slotledger.model.delivery.TradeEvent.Received;
import slotledger.model.delivery.TradeEvent.Sent;
import slotledger.model.delivery.TradeState;
import slotledger.model.plan.Plan;

/** An order goes its way from approval to the last parcel, and nothing is written down that can't have happened. */
class OrderCheckTest {

    private static final LocalDate DAY = LocalDate.of(2026, 12, 1);
    private static final String LINE = "Quillon/8";

    private final Plan plan = SmallWorld.ordering("Quillon", "8", 10);
    private final List<TradeState.Happened> happened = new ArrayList<>();

    @Test
    void nothingHappensBeforeSomebodyAnswersForTheMoney() {
        String refused = refused(new Sent(1, "Quillon", DAY));
        assertTrue(refused.contains("was not approved yet") && refused.contains("project order approve"), refused);
        happens(new Approved(1, "Head"));
        happens(new Sent(1, "Quillon", DAY));
        assertTrue(refused(new Approved(1, "Another")).contains("approved already, in entry 1"));
    }

    @Test
    void aSupplierOrALineThatTheOrderDoesNotHaveIsNamedWithThoseItHas() {
        happens(new Approved(1, "Head"));
        assertTrue(refused(new Sent(1, "Other", DAY)).contains("its suppliers are Quillon"));
        assertTrue(refused(new Received(1, DAY, "Other/8", 1, 0, 0, true, "")).contains("its lines are Quillon/8"));
        assertTrue(refused(new Confirmed(1, "Quillon", DAY, "", Optional.empty())).contains("not sent"));
    }

    @Test
    void partsAddUpAndWhatIsWrongDeadOrMissingIsStillWanted() {
        happens(new Approved(1, "Head"));
        happens(new Received(1, DAY, LINE, 4, 1, 0, true, ""));
        happens(new Received(1, DAY, LINE, 3, 0, 1, false, "second parcel"));
        OrderStatus.Line line = status().lines().get(0);
        assertEquals(List.of(7, 1, 1, 3, 3), List.of(line.good(), line.wrong(), line.dead(), line.untested(),
                line.missing()));
    }

    @Test
    void whatIsDrawnIsThereNoLongerAndNoMoreIsDrawnThanIsThere() {
        happens(new Approved(1, "Head"));
        happens(new Received(1, DAY, LINE, 4, 1, 0, true, ""));
        happens(new Drawn(1, DAY, LINE, 3, Optional.empty(), "a spare for the workshop"));
        assertTrue(refused(new Drawn(1, DAY, LINE, 2, Optional.empty(), "another")).contains("has 1 modules"));
        Receipt receipt = status().receipts().get(0);
        assertEquals(OptionalInt.of(5), receipt.modules());
        assertEquals(4, receipt.unusable());
    }

    @Test
    void anotherPlansOrderIsAnOrderOfItsOwn() {
        happens(new Approved(2, "Head"));
        assertTrue(status().approval().isEmpty());
    }

    private void happens(TradeEvent event) {
        if (event.plan() == 1) {
            assertDoesNotThrow(() -> OrderCheck.mustFit(event, status()));
        }
        happened.add(new TradeState.Happened(happened.size() + 1, Instant.EPOCH, "anna", event));
    }

    private String refused(TradeEvent event) {
        return assertThrows(DeskException.class, () -> OrderCheck.mustFit(event, status())).getMessage();
    }

    private OrderStatus status() {
        return OrderStatus.of(1, plan, new TradeState(happened));
    }
}
