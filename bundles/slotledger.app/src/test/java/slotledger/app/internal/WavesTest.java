package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.LocalDate;
import java.util.Currency;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.app.Project;
import slotledger.app.Survey;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Optimality;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Spending;
import slotledger.model.plan.Station;
import slotledger.model.source.Place;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Shelf;
import slotledger.model.trade.Supplier;
import slotledger.model.trade.Wave;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Money;

class WavesTest {

    private static final Money NOTHING = Money.zero(Currency.getInstance("EUR"));
    private static final LocalDate DAY = LocalDate.of(2026, 11, 20);
    private static final ModuleKind EIGHT = ModuleKind.of(
            Generation.DDR4, Form.DIMM, Capacity.ofGiB(8));

    private final SmallWorld world = new SmallWorld();
    private final MachinePlan work = world.plan("A", "8 -", "8 8");
    private final Offer offer = new Offer("o", "s", "p", EIGHT, 1, List.of(new PriceStep(1, NOTHING)),
            OptionalInt.of(5), OptionalInt.empty(), Optional.empty(), Optional.empty(), Place.NOWHERE);
    private final Wave next = new Wave("Next year", DAY.plusYears(1), Optional.of(new Money(900, NOTHING.currency())),
            Map.of(), Optional.empty());

    private Survey survey() {
        Policy policy = new Policy(NOTHING.currency(), List.of(), Optional.empty(), Map.of(), NOTHING, NOTHING, 0,
                false, true, false, Policy.LeaveAlone.NONE);
        Project project = new Project("school", List.of(), Optional.empty(), List.of(), List.of(), List.of(),
                Optional.empty(), DAY);
        return new Survey(project, List.of(), 1, List.of(), world.fleet(world.machine("A", "8 -")), List.of(),
                new Market(List.of(offer), Map.of("s", new Supplier("s", Optional.empty(), Optional.empty(),
                        Optional.empty()))),
                new Shelf(Map.of(EIGHT, 7)), Optional.of(policy), List.of());
    }

    private Plan before() {
        return new Plan("This year", DAY, survey().policy().orElseThrow(), List.of(work),
                List.of(new Purchase(offer, 2, List.of(), 0, 2)),
                List.of(new Leftover(SlotContent.of(EIGHT), 2, Leftover.Origin.BOUGHT, new Station.OnShelf()),
                        new Leftover(SlotContent.of(EIGHT), 1, Leftover.Origin.PULLED, new Station.Disposal())),
                new Spending(NOTHING, Map.of(), NOTHING, Map.of()),
                new Optimality(0, 0, NOTHING, NOTHING, "none", List.of(), false), List.of());
    }

    @Test
    void theNextWaveBeginsAsTheOneBeforeLeavesMachinesShelfAndStock() {
        Survey then = Waves.survey(survey(), next, Optional.of(before()));
        assertEquals(work.after(), then.fleet().machines().get(0).population());
        assertEquals(Map.of(EIGHT, 2), then.shelf().pieces());
        assertEquals(OptionalInt.of(3), then.market().offers().get(0).stock());
    }

    @Test
    void whatWasDecidedHoldsInEveryWaveAndWithEveryBudget() {
        Choices decided = new Choices(List.of(), List.of(), Set.of("room 7"), OptionalInt.empty());
        Survey survey = new Survey(survey().project(), List.of(), 1, List.of(), survey().fleet(), List.of(),
                survey().market(), survey().shelf(), survey().policy(), decided, List.of());
        assertEquals(decided, Waves.survey(survey, next, Optional.of(before())).choices());
        assertEquals(decided, survey.with(survey.policy().orElseThrow().withBudget(Optional.of(NOTHING))).choices());
    }

    @Test
    void aWaveHasItsOwnDayAndBudget() {
        Survey then = Waves.survey(survey(), next, Optional.empty());
        assertEquals(DAY.plusYears(1), then.project().date());
        assertEquals(next.budget(), then.policy().orElseThrow().budget());
        assertEquals(survey().fleet(), then.fleet());
    }
}
