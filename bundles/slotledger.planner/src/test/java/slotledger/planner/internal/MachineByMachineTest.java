package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.plan.BoughtAlone;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;

class MachineByMachineTest {

    private final Fixtures made = new Fixtures();
    private final Board two = made.board("two", 2, 8, 16, 1);

    /** A and B hold 4 GB once and want 8 GB, C holds 4 GB twice and wants 16 GB: its old ones serve A and B. */
    private void threeMachines() {
        made.machine("A1", two, "small", Fixtures.kind(4));
        made.machine("B1", two, "small", Fixtures.kind(4));
        made.machine("C1", two, "large", Fixtures.kind(4), Fixtures.kind(4));
        made.target("small", 8, 1);
        made.target("large", 16, 3);
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1000);
        made.offer("Alder", Fixtures.kind(8), 1, -1, 1, 1900);
        made.terms("Alder", 500, -1, -1);
    }

    @Test
    void pulledModulesAreNotUsedElsewhere() throws PlannerException {
        threeMachines();
        Plan plan = plan(made.request());
        // Two of 4 GB for 10.00 each, two of 8 GB for 19.00 each; 3 machines and 2 + 4 modules are handled.
        assertEquals(new BoughtAlone(3, 5, 3, Fixtures.eur(5800), Fixtures.eur(500), Fixtures.eur(2100)), alone(plan));
        assertEquals(Fixtures.eur(3800), plan.spending().goods());
    }

    @Test
    void theSumIsOrderedAtTheStepThatIsReached() throws PlannerException {
        threeMachines();
        made.offers.clear();
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1000, 2, 800);
        made.offer("Alder", Fixtures.kind(8), 1, -1, 1, 1900, 3, 1200);
        assertEquals(Fixtures.eur(1600 + 3600), alone(plan(made.request())).goods());
    }

    @Test
    void ownModulesGoToTheFirstMachines() throws PlannerException {
        threeMachines();
        made.shelf.put(Fixtures.kind(4), 1);
        assertEquals(Fixtures.eur(1000 + 3800), alone(plan(made.request())).goods());
    }

    @Test
    void theLastMachinesAreLeftOutWhereTheBudgetEnds() throws PlannerException {
        threeMachines();
        made.budget = Optional.of(Fixtures.eur(2500));
        BoughtAlone alone = alone(plan(made.request()));
        assertEquals(new BoughtAlone(2, 2, 2, Fixtures.eur(2000), Fixtures.eur(500), Fixtures.eur(1200)), alone);
    }

    @Test
    void whatIsSoldOutGoesToTheFirstMachines() throws PlannerException {
        threeMachines();
        made.offers.clear();
        made.offer("Alder", Fixtures.kind(4), 1, 1, 1, 1000);
        assertEquals(new BoughtAlone(1, 1, 1, Fixtures.eur(1000), Fixtures.eur(500), Fixtures.eur(600)),
                alone(plan(made.request())));
    }

    @Test
    void aCostCentreWithoutMoneyGetsNothing() throws PlannerException {
        made.machine("A1", two, "small", "Arts", Fixtures.kind(4));
        made.machine("B1", two, "small", "Music", Fixtures.kind(4));
        made.target("small", 8, 1);
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1000);
        made.centreBudgets.putAll(Map.of("Arts", Fixtures.eur(999), "Music", Fixtures.eur(1000)));
        assertEquals(new BoughtAlone(1, 1, 1, Fixtures.eur(1000), Fixtures.eur(0), Fixtures.eur(600)),
                alone(plan(made.request())));
    }

    @Test
    void aSmallOrderIsFilledUp() throws PlannerException {
        made.machine("A1", two, "small", Fixtures.kind(4));
        made.target("small", 8, 1);
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1000);
        made.terms("Alder", -1, -1, 2500);
        assertEquals(Fixtures.eur(3000), alone(plan(made.request())).goods());
    }

    @Test
    void thePlanIsNeverWorseThanBuyingForEachMachineByItself() throws PlannerException {
        int dearer = 0;
        int fewer = 0;
        for (int number = 1; number <= 150; number++) {
            Plan plan = plan(BruteForceTest.fleet(new Random(number)));
            BoughtAlone alone = alone(plan);
            long weight = plan.optimality().weightOnTarget();
            assertTrue(weight >= alone.weight(), "fleet " + number);
            assertTrue(weight > alone.weight() || plan.spending().total().compareTo(alone.total()) <= 0,
                    "fleet " + number + ": " + plan.spending() + " against " + alone);
            fewer += weight > alone.weight() ? 1 : 0;
            dearer += weight == alone.weight() && plan.spending().total().compareTo(alone.total()) < 0 ? 1 : 0;
        }
        assertTrue(fewer > 5 && dearer > 5, fewer + " fleets with fewer on target, " + dearer + " dearer");
    }

    @Test
    void noMoreMachinesAreOpenedThanPeopleAllow() throws PlannerException {
        threeMachines();
        PlanRequest all = made.request();
        Choices one = new Choices(Choices.NONE.pins(), Choices.NONE.tastes(), Choices.NONE.uniform(),
                OptionalInt.of(1));
        PlanRequest request = new PlanRequest(all.title(), all.fleet(), all.market(), all.shelf(), all.policy(),
                all.date(), one, Optional.empty());
        assertEquals(1, alone(plan(request)).opened());
    }

    private static BoughtAlone alone(Plan plan) {
        return plan.insights().alone().orElseThrow();
    }

    private static Plan plan(PlanRequest request) throws PlannerException {
        return new Planning(new PlainRules(), new ScipSolver()).plan(request, Progress.NONE);
    }
}
