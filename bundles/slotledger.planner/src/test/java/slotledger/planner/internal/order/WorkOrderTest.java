package slotledger.planner.internal.order;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import slotledger.model.plan.Station;

/** Outside check: every order of small fleets, tried one by one. */
class WorkOrderTest {

    private static Followed follow(Errands errands) {
        Workshop workshop = errands.work();
        workshop.rest().forEach(unit -> unit.goesTo(new Station.OnShelf()));
        return new Followed(errands, workshop);
    }

    @Test
    void swapsOfOneForOneNeedNoMoreThanTheBestOrderOfAll() {
        Random random = new Random(7);
        for (int round = 0; round < 200; round++) {
            Errands errands = Errands.exchangers(random, 2 + random.nextInt(round % 20 == 0 ? 6 : 5),
                    2 + random.nextInt(4));
            Followed found = follow(errands);
            EveryOrder best = new EveryOrder(errands);
            assertEquals(best.borrowed(), found.borrowed, "fleet " + round);
            assertTrue(found.bench <= Math.min(1, best.bench()), "fleet " + round);
        }
    }

    @Test
    void anyWorkComesCloseToTheBestOrderOfAll() {
        Random random = new Random(11);
        int found = 0;
        int possible = 0;
        for (int round = 0; round < 200; round++) {
            Errands errands = Errands.random(random, 2 + random.nextInt(round % 20 == 0 ? 6 : 5),
                    2 + random.nextInt(4), 3, 1);
            Followed followed = follow(errands);
            EveryOrder best = new EveryOrder(errands);
            String which = "fleet " + round + ": " + followed.bench + " and " + followed.borrowed
                    + " instead of " + best.bench() + " and " + best.borrowed();
            assertTrue(followed.borrowed <= best.borrowed() + 2, which);
            assertTrue(followed.bench <= 2 * Math.max(1, best.bench()), which);
            found += followed.bench;
            possible += best.bench();
        }
        assertTrue(found * 10 <= possible * 11, found + " instead of " + possible);
    }

    @Test
    void aRingWithoutStockNeedsOneBorrowedModuleHoweverManyLoopsItHas() {
        Errands errands = new Errands();
        for (String swap : List.of("ab", "ba", "bc", "cb", "cd", "dc", "ad", "da", "bd", "db")) {
            errands.machine("Main", "Lab", swap.substring(0, 1), swap.substring(1));
        }
        Workshop workshop = errands.work();
        assertEquals(1, workshop.rings().size(), "machines that wait");
        Followed followed = follow(errands);
        assertEquals(1, followed.borrowed);
        assertEquals(1, followed.bench);
    }

    @Test
    void aRingIsEnteredByWhatIsBought() {
        Errands errands = new Errands();
        for (String swap : List.of("ab", "ba", "ac", "ca")) {
            errands.machine("Main", "Lab", swap.substring(0, 1), swap.substring(1));
        }
        errands.machine("Main", "Lab", "a", "").bought("a");
        assertEquals(0, errands.work().rings().size());
    }

    @Test
    void aMachineOnlyOpenedForItsModulesComesWhenSomebodyWaits() {
        Errands errands = new Errands()
                .machine("Main", "Lab", "", "a").machine("Main", "Lab", "", "a")
                .machine("Main", "Lab", "a", "").machine("Main", "Lab", "a", "")
                .machine("Main", "Lab", "b", "").bought("b");
        assertEquals("40213", numbers(follow(errands)).replace("M000000", ""));
        assertEquals(1, follow(errands).bench);
    }

    @Test
    void aModuleGoesToAMachineOfItsOwnRoomThenOfItsOwnSite() {
        Errands errands = new Errands()
                .machine("Annexe", "Cart", "a", "").machine("Main", "Hall", "a", "").machine("Main", "Lab", "a", "")
                .machine("Main", "Lab", "", "a").bought("aa");
        assertEquals(0, follow(errands).betweenSites);
        Errands crossed = new Errands();
        for (String site : List.of("Annexe", "Main", "Tower")) {
            for (int i = 0; i < 5; i++) {
                crossed.machine(site, "Lab", "b", "a").machine(site, "Office", "a", "");
            }
        }
        crossed.bought("bbbbbbbbbbbbbbb");
        Followed followed = follow(crossed);
        assertEquals(0, followed.betweenSites);
        assertEquals(6, followed.visits, "each room once");
    }

    @Test
    void aSiteThatWaitsForAnotherComesAfterIt() {
        Errands errands = new Errands()
                .machine("Annexe", "Lab", "a", "").machine("Annexe", "Lab", "b", "").bought("b")
                .machine("Tower", "Lab", "", "a");
        Followed followed = follow(errands);
        assertEquals(2, followed.visits);
        assertEquals("Tower", followed.order.get(0).where().site());
    }

    @Test
    void randomWorkAtManyPlacesIsDoneWholeAndAlwaysTheSame() {
        for (int seed = 0; seed < 60; seed++) {
            Errands errands = Errands.random(new Random(seed), 300, 2 + seed % 7, 1 + seed % 4, 1 + seed % 5);
            Collections.shuffle(errands.openings, new Random(-seed));
            String first = numbers(follow(errands));
            Collections.shuffle(errands.openings, new Random(seed + 1));
            assertEquals(first, numbers(follow(errands)), "seed " + seed);
        }
    }

    private static String numbers(Followed followed) {
        return followed.order.stream().map(opening -> opening.tag().value()).collect(Collectors.joining());
    }
}
