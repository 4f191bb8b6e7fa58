package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.plan.Alternative;
import slotledger.model.plan.BudgetStep;
import slotledger.model.plan.Figures;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.WithoutChoice;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Market;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Taste;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.Advice;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.insight.DefaultAdvice;

/** What advice says that things cost, held against trying everything with and without them. */
class PricesByForceTest {

    private static final int FLEETS = 30;

    private static Advice advise(PlanRequest request) throws PlannerException {
        return DefaultAdvice.of(new Planning(new PlainRules(), new ScipSolver()), request, Progress.NONE);
    }

    private static String best(PlanRequest request) {
        BruteForce.Best best = new BruteForce(request, new PlainRules()).solve();
        return best.weight() < 0 ? "none" : best.weight() + " for " + best.cost();
    }

    private static String told(Figures figures) {
        return figures.weight() + " for " + figures.cost().minor();
    }

    private static PlanRequest fleet(int seed) {
        return seed % 2 == 0 ? BruteForceTest.fleetWithTerms(new Random(seed)) : BruteForceTest.fleet(new Random(seed));
    }

    private static PlanRequest pinned(PlanRequest request, Machine machine, Population after) {
        Map<String, SlotContent> slots = new LinkedHashMap<>();
        after.contents().forEach((label, content) -> {
            if (!content.equals(machine.population().in(label))) {
                slots.put(label, content);
            }
        });
        Pin pin = new Pin(machine.tag(), slots, Place.NOWHERE);
        return request.with(new Choices(List.of(pin), List.of(), Set.of(), OptionalInt.empty()));
    }

    @Test
    void anotherPopulationCostsWhatTheBestPlanWithTheMachinePinnedToItCosts() throws PlannerException {
        int dearer = 0;
        int impossible = 0;
        int tried = 0;
        for (int seed = 7001; seed < 7001 + FLEETS / 2; seed++) {
            PlanRequest request = fleet(seed);
            Advice advice = advise(request);
            String plan = told(Figures.of(advice.plan()));
            for (Machine machine : request.fleet().machines().subList(0, 2)) {
                for (Alternative each : advice.alternatives(machine.tag(), Progress.NONE)) {
                    if (each.replanned()) {
                        String forced = best(pinned(request, machine, each.after()));
                        assertEquals(forced, each.figures().map(PricesByForceTest::told).orElse("none"),
                                "fleet " + seed + ", " + machine.tag() + " with " + each.after());
                        assertTrue(!each.isPlanned() || forced.equals(plan), "fleet " + seed + " as planned");
                        tried++;
                        dearer += forced.equals(plan) ? 0 : 1;
                        impossible += each.figures().isEmpty() ? 1 : 0;
                    }
                }
            }
        }
        System.out.printf("%d populations, %d worse than planned, %d out of reach%n", tried, dearer, impossible);
        assertTrue(tried > FLEETS && dearer > FLEETS / 4 && impossible > 0,
                tried + " " + dearer + " " + impossible);
    }

    @Test
    void aPlanWithoutAnOfferIsTheBestOfAllWithoutIt() throws PlannerException {
        int lines = 0;
        int worse = 0;
        for (int seed = 7101; seed < 7101 + FLEETS; seed++) {
            PlanRequest request = fleet(seed);
            Advice advice = advise(request);
            for (Purchase line : advice.plan().purchases()) {
                Market fewer = new Market(request.market().offers().stream()
                        .filter(each -> !each.id().equals(line.offer().id())).toList(), request.market().suppliers());
                PlanRequest without = new PlanRequest(request.title(), request.fleet(), fewer, request.shelf(),
                        request.policy(), request.date());
                String forced = best(without);
                assertEquals(forced, told(advice.without(line.offer().id(), Progress.NONE).figures()),
                        "fleet " + seed + " without " + line.offer().id());
                lines++;
                worse += forced.equals(told(Figures.of(advice.plan()))) ? 0 : 1;
            }
        }
        System.out.printf("%d lines, %d of them worth something%n", lines, worse);
        assertTrue(lines > FLEETS / 3 && worse > FLEETS / 5, lines + " " + worse);
    }

    @Test
    void theNextEuroBuysTheBestOfAllPlansWithItAndACentLessBuysNothing() throws PlannerException {
        int steps = 0;
        for (int seed = 7201; seed < 7201 + FLEETS; seed++) {
            PlanRequest free = fleet(seed);
            free = free.with(free.policy().withoutBudgets());
            long dear = advise(free).plan().spending().payable().minor();
            PlanRequest request = withBudget(free, dear * 2 / 3);
            Advice advice = advise(request);
            for (BudgetStep step : advice.more(1, Progress.NONE)) {
                assertEquals(best(withBudget(request, step.budget().minor())), told(step.figures()), "fleet " + seed);
                String less = best(withBudget(request, step.budget().minor() - 1));
                assertTrue(less.startsWith(Figures.of(advice.plan()).weight() + " for"), "fleet " + seed + " " + less);
                steps++;
            }
        }
        System.out.printf("%d steps%n", steps);
        assertTrue(steps > FLEETS / 10, steps + " steps");
    }

    @Test
    void aDecisionCostsTheDifferenceToTheBestOfAllPlansWithoutIt() throws PlannerException {
        int decisions = 0;
        int dear = 0;
        for (int seed = 5001; seed < 5001 + FLEETS; seed++) {
            PlanRequest request = BruteForceChoicesTest.decided(
                    BruteForceTest.fleet(new Random(seed)), new Random(seed));
            Choices all = request.choices();
            Advice advice;
            try {
                advice = advise(request);
            } catch (PlannerException refusal) {
                continue;
            }
            List<WithoutChoice> told = advice.withInsights(Progress.NONE).insights().choices();
            List<Choices> others = new ArrayList<>();
            all.pins().forEach(unused -> others.add(
                    new Choices(List.of(), all.tastes(), all.uniform(), all.mostOpened())));
            for (int i = 0; i < all.tastes().size(); i++) {
                List<Taste> tastes = new ArrayList<>(all.tastes());
                tastes.remove(i);
                others.add(new Choices(all.pins(), tastes, all.uniform(), all.mostOpened()));
            }
            all.uniform().forEach(unused -> others.add(
                    new Choices(all.pins(), all.tastes(), Set.of(), all.mostOpened())));
            all.mostOpened().ifPresent(unused -> others.add(
                    new Choices(all.pins(), all.tastes(), all.uniform(), OptionalInt.empty())));
            assertEquals(others.size(), told.size(), "fleet " + seed);
            for (int i = 0; i < told.size(); i++) {
                assertEquals(best(request.with(others.get(i))), told(told.get(i).figures()),
                        "fleet " + seed + " without " + told.get(i).choice());
                decisions++;
                dear += told(told.get(i).figures()).equals(told(Figures.of(advice.plan()))) ? 0 : 1;
            }
        }
        System.out.printf("%d decisions, %d of them with a price%n", decisions, dear);
        assertTrue(decisions > FLEETS / 2 && dear > FLEETS / 10, decisions + " " + dear);
    }

    private static PlanRequest withBudget(PlanRequest request, long minor) {
        return request.with(request.policy().withBudget(Optional.of(Fixtures.eur(minor))));
    }
}
