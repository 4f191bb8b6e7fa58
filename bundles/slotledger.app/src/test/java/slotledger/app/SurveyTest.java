package slotledger.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.Fleet;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Market;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Policy.LeaveAlone;
import slotledger.model.trade.Shelf;
import slotledger.model.unit.Money;

class SurveyTest {

    private static final Money NOTHING = Money.zero(Currency.getInstance("EUR"));
    private static final Policy POLICY = new Policy(NOTHING.currency(), List.of(), Optional.empty(), Map.of(), NOTHING,
            NOTHING, 0, false, true, false, LeaveAlone.NONE);
    private static final Choices DECIDED = new Choices(List.of(), List.of(), Set.of("lab"), OptionalInt.of(7));

    private final Survey survey = new Survey(
            new Project("Spring", List.of(), Optional.empty(), List.of(), List.of(), List.of(), Optional.empty(),
                    LocalDate.of(2026, 3, 2)),
            List.of(), 0, List.of(), new Fleet(List.of(), Map.of()), List.of(), Market.NONE, Shelf.EMPTY,
            Optional.of(POLICY), DECIDED, List.of());

    @Test
    void whatPeopleDecidedHoldsUnderAnotherPolicy() {
        assertEquals(DECIDED, survey.with(POLICY.withBudget(Optional.of(NOTHING))).choices());
    }

    @Test
    void whatPeopleDecidedHoldsAtAnotherTime() {
        assertEquals(DECIDED, survey.at(survey.project(), survey.fleet(), survey.market(), survey.shelf(), POLICY)
                .choices());
    }
}
