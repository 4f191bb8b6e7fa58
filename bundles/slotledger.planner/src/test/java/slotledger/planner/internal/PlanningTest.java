package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.finding.Finding;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Station;
import slotledger.model.task.CancelledException;
import slotledger.model.task.Progress;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.model.trade.Target;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Rate;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlannerException;
import slotledger.rules.MemoryRules;
import slotledger.rules.standard.StandardRules;

class PlanningTest {

    private final Fixtures made = new Fixtures();
    private final Board board = made.board("one", 2, 8, 16, 1);

    private Plan plan() throws PlannerException {
        return new Planning(new PlainRules(), new ScipSolver()).plan(made.request(), Progress.NONE);
    }

    private static MachinePlan of(Plan plan, String tag) {
        return plan.find(new AssetTag(tag)).orElseThrow();
    }

    @Test
    void modulesThatStayAreNotMoved() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("M1", board, "pc", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        Plan plan = plan();
        assertEquals(List.of(new Move(
                        SlotContent.of(Fixtures.kind(4)),
                        new Station.FromOrder("Alder/P1"),
                        new Station.InSlot(new AssetTag("M1"), "B1"))),
                of(plan, "M1").moves());
        assertEquals(Fixtures.eur(1500 + 500 + 100), plan.spending().total());
        assertEquals(Outcome.REACHES_TARGET, of(plan, "M1").outcome());
    }

    @Test
    void amongPopulationsOfEqualCostTheDualChannelOneIsTaken() throws PlannerException {
        Board four = made.board("four", 4, 8, 32, 1);
        made.target("pc", 8, 1);
        made.machine("M1", four, "pc", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        assertEquals(2, of(plan(), "M1").runsAfter().mode().channels());
    }

    @Test
    void amongPopulationsThatRunAlikeTheOneInTheBoardsOrderIsTaken() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("M1", made.secondSlotsFirst("desk"), "pc", "", null, null, Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        for (MemoryRules rules : List.of(new PlainRules(), StandardRules.create())) {
            Plan plan = new Planning(rules, new ScipSolver()).plan(made.request(), Progress.NONE);
            assertEquals(new Station.InSlot(new AssetTag("M1"), "B2"), of(plan, "M1").moves().get(0).to());
        }
    }

    @Test
    void noMachineRunsOverFewerChannelsThanBefore() throws PlannerException {
        made.target("pc", 16, 1);
        made.machine("M1", board, "pc", Fixtures.kind(4), Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(16), 1, -1, 1, 1000);
        Board large = made.board("large", 2, 16, 32, 1);
        made.machine("M2", large, "pc", Fixtures.kind(4), Fixtures.kind(4));
        assertEquals(2, of(plan(), "M2").runsAfter().mode().channels());
    }

    @Test
    void packsAndSparesAreRoundedUp() throws PlannerException {
        made.target("pc", 8, 1);
        made.sparePercent = 1;
        for (int i = 0; i < 4; i++) {
            made.machine("M" + i, board, "pc", Fixtures.kind(4));
        }
        made.offer("Alder", Fixtures.kind(4), 2, -1, 1, 3000);
        Purchase line = plan().purchases().get(0);
        assertEquals(List.of(3, 1, 1), List.of(line.packs(), line.spares(), line.over()));
    }

    @Test
    void deliveryIsFreeFromTheThresholdOn() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("M1", board, "pc", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        made.offer("Birch", Fixtures.kind(4), 1, -1, 1, 1900);
        made.terms("Alder", 600, 2000, -1);
        made.terms("Birch", 600, 1900, -1);
        Plan plan = plan();
        assertEquals("Birch", plan.purchases().get(0).offer().supplier());
        assertEquals(Fixtures.eur(1900), plan.spending().payable());
    }

    @Test
    void aCheaperPriceStepMayBuyMoreThanIsNeeded() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("M1", board, "pc", Fixtures.kind(4));
        made.machine("M2", board, "pc", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500, 3, 900);
        Plan plan = plan();
        assertEquals(3, plan.purchases().get(0).packs());
        assertEquals(Fixtures.eur(2700), plan.spending().goods());
        assertEquals(List.of("order-filled-up"), plan.remarks().stream().map(Finding::code).toList());
    }

    @Test
    void pulledModulesGoToOtherMachinesAndDonorsComeFirst() throws PlannerException {
        made.target("pc", 8, 1);
        made.target("big", 16, 1);
        made.machine("A1", board, "pc", Fixtures.kind(4));
        made.machine("B1", board, "big", Fixtures.kind(4), Fixtures.kind(8));
        made.offer("Alder", Fixtures.kind(8), 1, -1, 1, 3000);
        Plan plan = plan();
        assertEquals(1, of(plan, "B1").workOrder());
        assertEquals(new Station.InSlot(new AssetTag("B1"), "A1"), of(plan, "A1").moves().get(0).from());
        assertTrue(of(plan, "B1").moves().contains(of(plan, "A1").moves().get(0)), "one move, listed with both");
        assertEquals(Fixtures.eur(3000), plan.spending().goods());
    }

    @Test
    void withoutReusePulledModulesAreLeftOver() throws PlannerException {
        made.reusePulled = false;
        made.target("pc", 8, 1);
        made.target("big", 16, 1);
        made.machine("A1", board, "pc", Fixtures.kind(4));
        made.machine("B1", board, "big", Fixtures.kind(4), Fixtures.kind(8));
        made.offer("Alder", Fixtures.kind(8), 1, -1, 1, 3000);
        Plan plan = plan();
        assertEquals(Fixtures.eur(6000), plan.spending().goods());
        assertEquals(Leftover.Origin.PULLED, plan.leftovers().get(0).origin());
        assertEquals(new Station.OnShelf(), plan.leftovers().get(0).to());
    }

    @Test
    void aMachineAboveItsTargetIsHarvestedOnlyWhereThePolicyLetsIt() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("A1", board, "pc", Fixtures.kind(8), Fixtures.kind(8));
        made.machine("B1", board, "pc");
        assertEquals(Outcome.NOT_HELPED, of(plan(), "B1").outcome());
        assertEquals(Obstacle.Kind.NO_MODULE, of(plan(), "B1").obstacle().orElseThrow().kind());
        made.harvest = true;
        assertEquals(Outcome.DONOR, of(plan(), "A1").outcome());
        assertEquals(Outcome.REACHES_TARGET, of(plan(), "B1").outcome());
    }

    @Test
    void machinesThatSwapAreNamedAsARing() throws PlannerException {
        Board small = made.board("small", 1, 8, 8, 1);
        Board pairs = made.board("pairs", 2, 4, 8, 2);
        made.target("small", 8, 1);
        made.target("pairs", 8, 1);
        made.machine("A1", small, "small", Fixtures.kind(4));
        made.machine("B1", pairs, "pairs", Fixtures.kind(8), Fixtures.kind(4));
        Plan before = plan();
        assertEquals(Outcome.ON_TARGET, of(before, "B1").outcome(), "12 GB are on target, though not allowed");
        made.harvest = true;
        Plan plan = plan();
        assertEquals(Outcome.DONOR, of(plan, "B1").outcome());
        assertTrue(plan.remarks().stream().anyMatch(remark -> remark.code().equals("swap-ring")));
    }

    @Test
    void theBudgetGoesToTheMoreUrgentMachine() throws PlannerException {
        made.target("pc", 8, 1);
        made.target("lab", 8, 3);
        made.machine("A1", board, "pc", Fixtures.kind(4));
        made.machine("B1", board, "lab", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        made.budget = Optional.of(Fixtures.eur(2000));
        Plan plan = plan();
        assertEquals(Outcome.REACHES_TARGET, of(plan, "B1").outcome());
        Obstacle obstacle = of(plan, "A1").obstacle().orElseThrow();
        assertEquals(Obstacle.Kind.BUDGET, obstacle.kind());
        assertEquals("EUR 10.00 more budget.", obstacle.freedBy());
    }

    @Test
    void aCostCentreSpendsNoMoreThanItsBudget() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("A1", board, "pc", "Science", Fixtures.kind(4));
        made.machine("A2", board, "pc", "science ", Fixtures.kind(4));
        made.machine("B1", board, "pc", "Arts", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        made.centreBudgets.put("Science", Fixtures.eur(1600));
        Plan plan = plan();
        assertEquals(Fixtures.eur(1500), plan.spending().byCostCentre().get("Science"));
        assertEquals(Fixtures.eur(1500), plan.spending().byCostCentre().get("Arts"));
        assertEquals(Obstacle.Kind.BUDGET, of(plan, "A2").obstacle().orElseThrow().kind());
        assertTrue(of(plan, "A2").obstacle().orElseThrow().message().contains("cost centre Science"));
        made.shelf.put(Fixtures.kind(4), 1);
        assertEquals(2, plan().spending().byCostCentre().size(), "owned modules cost no centre anything");
        assertEquals(3, plan().count(Outcome.REACHES_TARGET));
    }

    @Test
    void obstaclesSayWhatBinds() throws PlannerException {
        made.target("pc", 8, 1);
        made.target("big", 32, 1);
        made.machine("A1", board, "pc", Fixtures.kind(4));
        made.machine("A2", board, "pc", Fixtures.kind(4));
        made.machine("B1", board, "big", Fixtures.kind(8), Fixtures.kind(8));
        made.machine("C1", board, "pc", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, 1, 1, 1500);
        made.leaveAlone = new Policy.LeaveAlone(Set.of("c1"), Set.of(), Set.of());
        Plan plan = plan();
        assertEquals(Obstacle.Kind.STOCK, of(plan, "A2").obstacle().orElseThrow().kind());
        assertEquals(Obstacle.Kind.RULE, of(plan, "B1").obstacle().orElseThrow().kind());
        assertEquals("A target of at most 16 GB, or another machine.",
                of(plan, "B1").obstacle().orElseThrow().freedBy());
        assertEquals(Outcome.LEFT_ALONE, of(plan, "C1").outcome());
        assertEquals(Obstacle.Kind.POLICY, of(plan, "C1").obstacle().orElseThrow().kind());
    }

    @Test
    void whatStillLacksWithEveryAllowedPopulationIsSaid() throws PlannerException {
        made.targets.add(new Target("pc", Capacity.ofGiB(8), false, false, Optional.of(Rate.of(3200)), 1));
        made.machine("A1", board, "pc", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        Obstacle obstacle = of(plan(), "A1").obstacle().orElseThrow();
        assertEquals(Obstacle.Kind.RULE, obstacle.kind());
        assertTrue(obstacle.message().contains("would still have 2666 MT/s instead of 3200 MT/s"), obstacle.message());
    }

    @Test
    void aModuleWithAMissingFactIsNamedAsTheObstacle() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("A1", board, "pc", Fixtures.kind(4));
        made.offer("Alder", ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(4)), 1, -1, 1, 1500);
        Obstacle obstacle = of(plan(), "A1").obstacle().orElseThrow();
        assertEquals(Obstacle.Kind.MISSING_FACT, obstacle.kind());
        assertEquals("Look at the module.", obstacle.freedBy());
    }

    @Test
    void aModuleWithAMissingFactMayStayWhereItRuns() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("A1", board, "pc", ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(4)));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        Plan plan = plan();
        assertEquals(Outcome.REACHES_TARGET, of(plan, "A1").outcome());
        assertEquals(1, of(plan, "A1").moves().size());
    }

    @Test
    void aDoubtThatIsBorneIsNoMissingFact() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("A1", board, "pc", ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(4)));
        made.machine("A2", board, "pc", ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(4)));
        made.offer("Alder", Fixtures.kind(4), 1, 1, 1, 1500);
        assertEquals(Obstacle.Kind.STOCK, of(plan(), "A2").obstacle().orElseThrow().kind());
    }

    @Test
    void expiredOffersAreLeftOutWithARemark() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("A1", board, "pc", Fixtures.kind(4));
        Offer offer = made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        made.offers.set(0, new Offer(offer.id(), offer.supplier(), offer.part(), offer.piece(), 1, offer.steps(),
                offer.stock(), offer.leadDays(), Optional.empty(), Optional.of(LocalDate.of(2026, 3, 1)),
                offer.place()));
        Plan plan = plan();
        assertTrue(plan.purchases().isEmpty());
        assertEquals("offer-expired", plan.remarks().get(0).code());
    }

    @Test
    void uselessPulledModulesGoToDisposal() throws PlannerException {
        made.target("pc", 8, 1);
        made.machine("A1", board, "pc", Fixtures.kind(Generation.DDR3, 4, 1600), Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        assertEquals(Outcome.ON_TARGET, of(plan(), "A1").outcome(), "what runs is taken as it is");
        made.targets.clear();
        made.target("pc", 9, 1);
        made.offer("Alder", Fixtures.kind(8), 1, -1, 1, 2500);
        assertEquals(new Station.Disposal(), plan().leftovers().get(0).to());
    }

    @Test
    void theSameRequestGivesTheSamePlanInAnyOrderOfMachines() throws PlannerException {
        Fixtures one = LargeFleets.of(60, 5);
        Plan first = new Planning(new PlainRules(), new ScipSolver()).plan(one.request(), Progress.NONE);
        Plan second = new Planning(new PlainRules(), new ScipSolver()).plan(one.request(), Progress.NONE);
        assertEquals(first, second);
        assertEquals(first.toString(), second.toString());
        Collections.shuffle(one.machines, new Random(3));
        Plan shuffled = new Planning(new PlainRules(), new ScipSolver()).plan(one.request(), Progress.NONE);
        first.machines().forEach(machine ->
                assertEquals(machine, shuffled.find(machine.machine().tag()).orElseThrow()));
    }

    @Test
    void theUserCanStopIt() {
        made.machine("A1", board, "pc", Fixtures.kind(4));
        Progress stop = new Progress() {
            @Override
            public void step(String what, double done) {
                assertFalse(what.isBlank());
            }

            @Override
            public boolean isCancelled() {
                return true;
            }
        };
        assertThrows(CancelledException.class,
                () -> new Planning(new PlainRules(), new ScipSolver()).plan(made.request(), stop));
    }
}
