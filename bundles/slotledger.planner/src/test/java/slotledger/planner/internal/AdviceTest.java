package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.BudgetCurve;
import slotledger.model.plan.BudgetStep;
import slotledger.model.plan.Figures;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.model.unit.Money;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.Advice;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.insight.DefaultAdvice;

/** Every answer is held against a fresh plan made under the terms it speaks of. */
class AdviceTest {

    private static final int FLEETS = 40;

    private final Planning planning = new Planning(new PlainRules(), new ScipSolver());

    private Advice advise(PlanRequest request) throws PlannerException {
        return DefaultAdvice.of(planning, request, Progress.NONE);
    }

    private Plan fresh(PlanRequest request) throws PlannerException {
        return planning.plan(request, Progress.NONE);
    }

    private static PlanRequest withBudget(PlanRequest request, Money budget) {
        return request.with(request.policy().withBudget(Optional.of(budget)));
    }

    private static PlanRequest without(PlanRequest request, String offer) {
        Market market = new Market(
                request.market().offers().stream().filter(each -> !each.id().equals(offer)).toList(),
                request.market().suppliers());
        return new PlanRequest(request.title(), request.fleet(), market, request.shelf(), request.policy(),
                request.date());
    }

    /** What is proven of a plan; among plans of equal cost the money for suppliers may differ. */
    private static String proven(Figures figures) {
        assertTrue(figures.isProven(), figures.toString());
        return figures.onTarget() + " machines of weight " + figures.weight() + " for " + figures.cost();
    }

    @Test
    void doingWithoutALineCostsWhatAPlanWithoutTheOfferCosts() throws PlannerException {
        int lines = 0;
        int dearer = 0;
        for (int seed = 1; seed <= FLEETS; seed++) {
            PlanRequest request = BruteForceTest.fleet(new Random(seed));
            Advice advice = advise(request);
            for (Purchase line : advice.plan().purchases()) {
                String offer = line.offer().id();
                Figures told = advice.without(offer, Progress.NONE).figures();
                Figures fresh = Figures.of(fresh(without(request, offer)));
                assertEquals(fresh.weight() + " for " + fresh.cost(), told.weight() + " for " + told.cost(),
                        "fleet " + seed + " without " + offer);
                lines++;
                dearer += told.cost().compareTo(advice.plan().spending().total()) > 0 ? 1 : 0;
            }
        }
        assertTrue(lines > FLEETS / 4 && dearer > FLEETS / 8, lines + " lines, " + dearer + " dearer without");
    }

    @Test
    void aLargerBudgetBuysWhatIsSaidAndACentLessDoesNot() throws PlannerException {
        int steps = 0;
        for (int seed = 1; seed <= FLEETS; seed++) {
            PlanRequest request = BruteForceTest.fleet(new Random(seed));
            Advice advice = advise(request);
            Figures before = Figures.of(advice.plan());
            for (BudgetStep step : advice.more(3, Progress.NONE)) {
                Plan reached = fresh(withBudget(request, step.budget()));
                assertTrue(step.isSmallest());
                assertEquals(proven(Figures.of(reached)), proven(step.figures()), "fleet " + seed);
                Figures less = Figures.of(fresh(withBudget(request, step.budget().minus(Fixtures.eur(1)))));
                assertEquals(before.weight(), less.weight(), "fleet " + seed + " with a cent less");
                assertEquals(reached.optimality().weightOnTarget() - advice.plan().optimality().weightOnTarget(),
                        weight(reached, step.gained()) - weight(reached, step.lost()), "fleet " + seed);
                before = step.figures();
                steps++;
            }
        }
        assertTrue(steps > FLEETS / 10, steps + " steps");
    }

    private static long weight(Plan plan, List<AssetTag> tags) {
        return tags.stream().mapToLong(tag -> plan.find(tag).orElseThrow().target().orElseThrow().weight()).sum();
    }

    @Test
    void aSmallerBudgetLosesWhatIsSaid() throws PlannerException {
        int steps = 0;
        for (int seed = 1; seed <= FLEETS; seed++) {
            PlanRequest request = BruteForceTest.fleet(new Random(seed));
            Advice advice = advise(request);
            List<BudgetStep> less = advice.less(3, Progress.NONE);
            assertEquals(Figures.of(advice.plan()).weight(), less.get(0).figures().weight(), "fleet " + seed);
            assertTrue(less.get(0).budget().compareTo(advice.plan().spending().payable()) <= 0, "fleet " + seed);
            for (int i = 0; i < less.size(); i++) {
                BudgetStep step = less.get(i);
                assertEquals(proven(Figures.of(fresh(withBudget(request, step.budget())))), proven(step.figures()));
                if (step.budget().minor() > 0) {
                    Figures cut = Figures.of(fresh(withBudget(request, step.budget().minus(Fixtures.eur(1)))));
                    assertTrue(cut.weight() < step.figures().weight(), "fleet " + seed + " with a cent less");
                    assertTrue(i + 1 == less.size() || cut.weight() == less.get(i + 1).figures().weight());
                }
                steps += i;
            }
        }
        assertTrue(steps > FLEETS / 4, steps + " steps down");
    }

    @Test
    void everyPointOfTheCurveIsThePlanMadeWithItsBudget() throws PlannerException {
        for (int seed = 1; seed <= FLEETS / 2; seed++) {
            PlanRequest request = BruteForceTest.fleet(new Random(seed));
            Advice advice = advise(request);
            List<BudgetCurve> told = new ArrayList<>();
            BudgetCurve curve = advice.curve(6, told::add, Progress.NONE);
            assertEquals(curve, told.get(told.size() - 1));
            assertTrue(curve.points().size() <= 8, curve.toString());
            for (BudgetCurve.Point point : curve.points()) {
                assertEquals(proven(Figures.of(fresh(withBudget(request, point.budget())))), proven(point.figures()),
                        "fleet " + seed + " for " + point.budget());
                if (request.policy().budget().equals(Optional.of(point.budget()))) {
                    assertEquals(Figures.of(advice.plan()), point.figures(), "fleet " + seed);
                }
            }
            request.policy().budget().ifPresent(budget -> assertTrue(
                    curve.points().stream().anyMatch(point -> point.budget().equals(budget))));
        }
    }

    @Test
    void theLastPointOfTheCurveIsAllThatMoneyIsGoodFor() throws PlannerException {
        Fixtures made = new Fixtures();
        made.target("pc", 8, 1);
        for (int i = 0; i < 3; i++) {
            made.machine("M" + i, made.board("one", 2, 8, 16, 1), "pc", Fixtures.kind(4));
        }
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        made.budget = Optional.of(Fixtures.eur(2000));
        BudgetCurve curve = advise(made.request()).curve(10, unused -> { }, Progress.NONE);
        assertEquals(
                "0: 0, 500: 0, 1000: 0, 1500: 1, 2000: 1, 2500: 1, 3000: 2, 3500: 2, 4000: 2, 4500: 3",
                String.join(", ", curve.points().stream()
                        .map(point -> point.budget().minor() + ": " + point.figures().weight()).toList()));
        assertEquals(3, curve.withTarget());
    }

    @Test
    void withoutABudgetMoneyBuysNothingMore() throws PlannerException {
        Fixtures made = new Fixtures();
        made.target("pc", 8, 1);
        made.machine("M1", made.board("one", 2, 8, 16, 1), "pc", Fixtures.kind(4));
        made.offer("Alder", Fixtures.kind(4), 1, -1, 1, 1500);
        Advice advice = advise(made.request());
        assertEquals(List.of(), advice.more(3, Progress.NONE));
        assertEquals(List.of(Fixtures.eur(1500), Fixtures.eur(0)),
                advice.less(3, Progress.NONE).stream().map(BudgetStep::budget).toList());
    }

    @Test
    void insightsHoldEveryLineAndTheStepsOfTheBudget() throws PlannerException {
        Fixtures made = LargeFleets.of(40, 5);
        made.shelf.clear();
        made.budget = Optional.of(Fixtures.eur(9_000));
        Advice advice = advise(made.request());
        Plan plan = advice.withInsights(Progress.NONE);
        assertEquals(advice.plan(), plan.withInsights(advice.plan().insights()));
        assertEquals(plan.purchases().stream().map(line -> line.offer().id()).toList(),
                plan.insights().without().stream().map(each -> each.offer()).toList());
        assertEquals(List.of(3, 4), List.of(plan.insights().less().size(), plan.insights().more().size()));
    }
}
