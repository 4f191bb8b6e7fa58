package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.module.Form;
import slotledger.model.module.Generation;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;
import slotledger.model.task.Progress;
import slotledger.model.trade.Buying;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Tax;
import slotledger.model.unit.Capacity;
import slotledger.model.unit.Percent;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.rules.MemoryRules;
import slotledger.rules.fixture.ModuleText;
import slotledger.rules.standard.StandardRules;

class BruteForceTest {

    /** Two speeds never meet on one board with pairs, so that all modules must go where a faster one comes. */
    private static final Piece SLOW = ModuleText.piece("64MB RDRAM-600 RIMM_184 x16 128Mbit non-ECC 53ns");
    private static final Piece FAST = ModuleText.piece("256MB RDRAM-800 RIMM_184 x16 256Mbit non-ECC 45ns");

    @Test
    void smallFleetsGetTheBestPlanOfAll() throws PlannerException {
        compare(new PlainRules(), 1, fleets(150));
    }

    @Test
    void smallFleetsGetTheBestPlanOfAllByTheStandardRules() throws PlannerException {
        compare(StandardRules.create(), 1001, fleets(100));
    }

    @Test
    void smallFleetsWithFewContinuityModulesGetTheBestPlanOfAll() throws PlannerException {
        int withFillers = compare(StandardRules.create(), 2001, fleets(150),
                BruteForceTest::fleetWithFewContinuityModules);
        assertTrue(withFillers > 10, withFillers + " fleets with fillers put in");
    }

    @Test
    void smallFleetsWithAllTermsOfTheTradeGetTheBestPlanOfAll() throws PlannerException {
        compare(new PlainRules(), 3001, fleets(100), BruteForceTest::fleetWithTerms);
    }

    /** Ten times as many where the system property long.tests is true. */
    private static int fleets(int few) {
        return Boolean.getBoolean("long.tests") ? few * 10 : few;
    }

    private static void compare(MemoryRules rules, int firstSeed, int fleets) throws PlannerException {
        compare(rules, firstSeed, fleets, BruteForceTest::fleet);
    }

    private static int compare(
            MemoryRules rules, int firstSeed, int fleets, Function<Random, PlanRequest> fleet) throws PlannerException {
        int worked = 0;
        int missed = 0;
        int bought = 0;
        int passedOn = 0;
        int withFillers = 0;
        for (int seed = firstSeed; seed < firstSeed + fleets; seed++) {
            PlanRequest request = fleet.apply(new Random(seed));
            Plan plan = new Planning(rules, new ScipSolver()).plan(request, Progress.NONE);
            BruteForce.Best best = new BruteForce(request, rules).solve();
            long moves = plan.machines().stream().mapToLong(machine -> machine.moves().size()).sum();
            assertEquals(best, new BruteForce.Best(
                    plan.optimality().weightOnTarget(), plan.spending().total().minor(), moves), "fleet " + seed);
            assertTrue(plan.optimality().isProven(), "fleet " + seed);
            worked += plan.work().isEmpty() ? 0 : 1;
            missed += plan.machines().stream().anyMatch(machine -> machine.obstacle().isPresent()) ? 1 : 0;
            bought += plan.purchases().isEmpty() ? 0 : 1;
            passedOn += plan.work().stream().anyMatch(BruteForceTest::takesFromAnother) ? 1 : 0;
            withFillers += plan.work().stream().anyMatch(BruteForceTest::takesAFiller) ? 1 : 0;
        }
        System.out.printf("%d fleets: %d with work, %d with obstacles, %d with an order, %d with modules passed on,"
                + " %d with fillers put in%n", fleets, worked, missed, bought, passedOn, withFillers);
        assertTrue(worked > fleets / 3 && missed > fleets / 10 && bought > fleets / 5 && passedOn > fleets / 20);
        return withFillers;
    }

    private static boolean takesFromAnother(MachinePlan machine) {
        return machine.moves().stream().anyMatch(move -> move.from() instanceof Station.InSlot from
                && move.to() instanceof Station.InSlot to && !from.machine().equals(to.machine()));
    }

    private static boolean takesAFiller(MachinePlan machine) {
        return machine.moves().stream().anyMatch(move -> move.content() instanceof SlotContent.Filled
                && move.to() instanceof Station.InSlot);
    }

    static PlanRequest fleet(Random random) {
        Fixtures made = new Fixtures();
        List<ModuleKind> kinds = new ArrayList<>(List.of(
                Fixtures.kind(4), Fixtures.kind(8), Fixtures.kind(Generation.DDR4, 4, 2133),
                ModuleKind.of(Generation.DDR4, Form.DIMM, Capacity.ofGiB(2)),
                Fixtures.kind(Generation.DDR3, 8, 1600)));
        Collections.shuffle(kinds, random);
        kinds = kinds.subList(0, 2 + random.nextInt(3));
        if (kinds.stream().noneMatch(kind -> kind.equals(Fixtures.kind(8)))) {
            kinds.set(0, Fixtures.kind(8));
        }
        List<Board> boards = List.of(
                made.board("one", 2, 8, 16, 1),
                made.board("two", 2, 4, 8, 1),
                made.board("three", 2, 8, 16, 2));
        int machines = 3 + random.nextInt(kinds.size() > 3 ? 2 : 3);
        for (int i = 0; i < machines; i++) {
            ModuleKind[] now = {pick(kinds, random), pick(kinds, random)};
            made.machine("M" + i, boards.get(random.nextInt(3)), "role" + random.nextInt(2), now);
        }
        made.target("role0", 6 + 2 * random.nextInt(6), 1 + random.nextInt(3));
        made.target("role1", 8, 1 + random.nextInt(2));
        trade(made, kinds, 1, -1, random);
        return made.request();
    }

    /** Two or three machines with RIMM sockets, of which none may be empty, and hardly enough to fill them. */
    private static PlanRequest fleetWithFewContinuityModules(Random random) {
        Fixtures made = new Fixtures();
        List<Board> boards = List.of(
                Worlds.RDRAM.board("pairs", random), Worlds.RDRAM_ONE_CHANNEL.board("row", random));
        boards.forEach(made::add);
        Piece filler = Filler.CONTINUITY_184;
        List<Piece> pieces = random.nextBoolean()
                ? Worlds.RDRAM.pieces(2, boards.get(0), random)
                : List.of(SLOW, FAST, filler);
        for (int i = 0; i < 2 + random.nextInt(2); i++) {
            Board board = Worlds.pick(boards, random);
            Piece[] now = new Piece[board.sockets().size()];
            Arrays.fill(now, filler);
            int filled = board.sockets().size() == 3 ? 1 + random.nextInt(3) : 2 + 2 * random.nextInt(2);
            int second = random.nextInt(4) / 3;
            for (int socket = 0; socket < filled; socket++) {
                now[board.sockets().size() == 3 ? socket : List.of(0, 2, 1, 3).get(socket)] =
                        pieces.get(filled == 4 && socket > 1 ? second : 0);
            }
            made.machine("M" + i, board, "role" + random.nextInt(2), now);
        }
        made.target("role0", Worlds.RDRAM.amount(random), 1 + random.nextInt(3));
        made.target("role1", Worlds.RDRAM.amount(random), 1 + random.nextInt(2));
        trade(made, pieces, 2, 4, random);
        return made.request();
    }

    /** Prices for further packs, tax in budgets, at least one spare, late and ended offers. */
    static PlanRequest fleetWithTerms(Random random) {
        Fixtures made = new Fixtures();
        Board board = made.board("one", 2, 8, 16, 1);
        List<ModuleKind> kinds = List.of(Fixtures.kind(4), Fixtures.kind(8));
        for (int i = 0; i < 3 + random.nextInt(2); i++) {
            made.machine("M" + i, board, "role" + random.nextInt(2), pick(kinds, random), pick(kinds, random));
        }
        made.target("role0", 8 + 4 * random.nextInt(3), 1 + random.nextInt(3));
        made.target("role1", 8 + 8 * random.nextInt(2), 1);
        trade(made, kinds, 2, -1, random);
        for (Offer offer : List.copyOf(made.offers)) {
            Offer changed = random.nextInt(3) > 0 ? made.furtherPacks(offer) : offer;
            changed = random.nextInt(3) > 0 ? made.arrivingIn(random.nextInt(20), changed) : changed;
            changed = random.nextInt(3) == 0 ? made.taxed(random.nextInt(3) * 7, changed) : changed;
            if (random.nextInt(4) == 0) {
                made.holdingUntil(Fixtures.DAY.plusDays(random.nextInt(5) - 3), changed);
            }
        }
        Optional<Percent> percent = random.nextBoolean() ? Optional.of(Percent.of(19)) : Optional.empty();
        made.buying = new Buying(random.nextBoolean() ? Optional.of(Fixtures.DAY.plusDays(10)) : Optional.empty(),
                Map.of(), new Tax(percent, random.nextInt(3) > 0), random.nextBoolean());
        made.atLeastOneSpare = random.nextBoolean();
        return made.request();
    }

    private static void trade(Fixtures made, List<? extends Piece> kinds, int leastOffers, int plenty, Random random) {
        int offers = leastOffers + random.nextInt(4);
        for (int i = 0; i < offers; i++) {
            Piece kind = kinds.get(random.nextInt(kinds.size()));
            int price = 500 + random.nextInt(4000);
            int stock = random.nextInt(3) == 0 ? random.nextInt(4) : plenty;
            int[] prices = random.nextInt(3) == 0
                    ? new int[] {1, price, 2 + random.nextInt(3), price * 3 / 4} : new int[] {1, price};
            made.offer("S" + random.nextInt(2), kind, 1 + random.nextInt(2), stock, prices);
        }
        for (String supplier : List.copyOf(made.suppliers.keySet())) {
            if (random.nextInt(2) == 0) {
                made.terms(supplier, random.nextInt(900), random.nextBoolean() ? 3000 + random.nextInt(4000) : -1,
                        random.nextInt(3) == 0 ? random.nextInt(5000) : -1);
            }
        }
        for (Piece kind : kinds) {
            if (random.nextInt(3) == 0) {
                made.shelf.put(kind, 1 + random.nextInt(2));
            }
        }
        made.budget = random.nextInt(2) == 0
                ? Optional.of(Fixtures.eur(random.nextInt(12_000))) : Optional.empty();
        made.perMachine = random.nextInt(2) * 700;
        made.perModule = random.nextInt(2) * 150;
        made.sparePercent = random.nextInt(2) * 10;
        made.reusePulled = random.nextInt(4) > 0;
        made.harvest = random.nextInt(2) == 0;
    }

    private static ModuleKind pick(List<ModuleKind> kinds, Random random) {
        int chosen = random.nextInt(kinds.size() + 1);
        return chosen == kinds.size() ? null : kinds.get(chosen);
    }
}
