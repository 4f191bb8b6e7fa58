package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Receipt;
import slotledger.model.delivery.Settlement;
import slotledger.model.difference.Difference;
import slotledger.model.machine.AssetTag;
import slotledger.model.module.Piece;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.delivery.AllotmentAudit;
import slotledger.planner.internal.delivery.Arrival;
import slotledger.rules.standard.StandardRules;

class SettlingTest {

    private final Fixtures fixtures = new Fixtures();
    private final Planning planning = new Planning(StandardRules.create(), new ScipSolver());

    private Plan plan() throws PlannerException {
        return planning.plan(fixtures.request(), Progress.NONE);
    }

    private Settlement settled(Plan plan, Set<AssetTag> done, List<Receipt> receipts) throws PlannerException {
        return new Settling(plan, new Arrival(plan, receipts, done), fixtures.boards,
                new Market(fixtures.offers, fixtures.suppliers), planning).settle(Progress.NONE);
    }

    private static Receipt modules(String offer, int count) {
        return new Receipt("", offer, OptionalInt.empty(), OptionalInt.of(count), 0, Place.NOWHERE);
    }

    private static List<String> work(Plan plan) {
        return plan.work().stream().map(machine -> machine.machine().tag().value()).sorted().toList();
    }

    @Test
    void whereAllArrivedThePlanStaysAsItIs() throws PlannerException {
        Plan plan = offices();
        Settlement settled = settled(plan, Set.of(), List.of(modules("Alder/P1", 4)));
        assertTrue(Difference.of(settled.before(), settled.plan()).isNone());
        assertEquals(List.of("M1", "M2", "M3", "M4"), work(settled.plan()));
    }

    private Plan offices() throws PlannerException {
        Board board = fixtures.board("b", 2, 16, 32, 1);
        for (String tag : List.of("M1", "M2", "M3", "M4")) {
            fixtures.machine(tag, board, "office", Fixtures.kind(4), null);
        }
        fixtures.target("office", 12, 1);
        fixtures.offer("Alder", Fixtures.kind(8), 1, -1, 1, 2000);
        return plan();
    }

    @Test
    void finishedMachinesAreNotOpenedAgainAndTheMoneyOfTheOrderStaysSpent() throws PlannerException {
        Plan plan = offices();
        Settlement settled = settled(plan, Set.of(new AssetTag("M2")), List.of(modules("Alder/P1", 2)));
        Plan end = settled.plan();
        MachinePlan finished = end.find(new AssetTag("M2")).orElseThrow();
        assertEquals(Outcome.ON_TARGET, finished.outcome());
        assertEquals(plan.find(new AssetTag("M2")).orElseThrow().after(), finished.before());
        assertEquals(1, end.work().size());
        assertEquals(2, Difference.onTarget(end));
        assertEquals(plan.spending().goods(), end.spending().goods());
        assertEquals(Fixtures.eur(2 * (500 + 100)), end.spending().labour(), "of M2 and of the one that is left");
        assertEquals(2, Difference.of(settled.before(), settled.plan()).machines().size());
        assertEquals(List.of(), Difference.of(settled.before(), settled.plan()).lines());
        assertEquals(List.of(), Difference.of(settled.before(), settled.plan()).terms());
    }

    @Test
    void whatWasMeantForOthersServesWhereItReachesATarget() throws PlannerException {
        Board board = fixtures.board("b", 2, 16, 32, 1);
        fixtures.machine("M1", board, "office", Fixtures.kind(4), null);
        fixtures.machine("U1", board, "urgent", Fixtures.kind(4), null);
        fixtures.target("office", 12, 1);
        fixtures.target("urgent", 20, 5);
        fixtures.offer("Alder", Fixtures.kind(8), 1, -1, 1, 2000);
        fixtures.offer("Birch", Fixtures.kind(16), 1, -1, 1, 5000);
        Plan plan = plan();
        Settlement settled = settled(plan, Set.of(), List.of(modules("Birch/P2", 1)));
        assertEquals(List.of("U1"), work(settled.plan()));
        Settlement other = settled(plan, Set.of(), List.of(modules("Alder/P1", 1)));
        assertEquals(List.of("M1"), work(other.plan()));
        Settlement none = settled(plan, Set.of(), List.of());
        assertEquals(List.of(), work(none.plan()));
        assertEquals(0, Difference.onTarget(none.plan()));
    }

    @Test
    void aMachineGetsSomethingElseThanPlannedWhereOnlyThatReachesItsTarget() throws PlannerException {
        Board board = fixtures.board("b", 2, 16, 32, 1);
        fixtures.machine("M1", board, "office", Fixtures.kind(4), null);
        fixtures.machine("M2", board, "lab", Fixtures.kind(4), null);
        fixtures.target("office", 12, 1);
        fixtures.target("lab", 20, 1);
        fixtures.offer("Alder", Fixtures.kind(8), 1, -1, 1, 2000);
        fixtures.offer("Birch", Fixtures.kind(16), 1, -1, 1, 5000);
        Plan plan = plan();
        Settlement settled = settled(plan, Set.of(new AssetTag("M2")),
                List.of(modules("Birch/P2", 2)));
        assertEquals(List.of("M1"), work(settled.plan()), "the second module of 16 GB was not planned for it");
        assertEquals(2, Difference.onTarget(settled.plan()));
    }

    @Test
    void neverIsMoreAllottedThanIsThereAndNoTargetIsLostAgainstThePlanAsItWas() throws PlannerException {
        Fixtures made = LargeFleets.of(40, 5);
        Plan plan = planning.plan(made.request(), Progress.NONE);
        Random random = new Random(11);
        for (int round = 0; round < 6; round++) {
            List<Receipt> receipts = new ArrayList<>();
            plan.purchases().forEach(line ->
                    receipts.add(modules(line.offer().id(), random.nextInt(line.modules() + 1))));
            Arrival arrival = new Arrival(plan, receipts, Set.of());
            Settlement settled = new Settling(plan, arrival, made.boards, Market.NONE, planning)
                    .settle(Progress.NONE);
            new AllotmentAudit(arrival.there(), settled.delivery().lines()).check(settled.plan());
            assertTrue(settled.plan().optimality().weightOnTarget() >= weight(settled.delivery()));
        }
    }

    /** What is on target by the plan cut down to what can be done of it. */
    private static long weight(Delivery delivery) {
        return delivery.now().machines().stream()
                .filter(machine -> machine.outcome() == Outcome.ON_TARGET || machine.outcome() == Outcome.DONOR
                        || machine.outcome() == Outcome.REACHES_TARGET)
                .mapToLong(machine -> machine.target().orElseThrow().weight()).sum();
    }

    @Test
    void theAuditFindsAModuleThatIsNotThereAndOneThatIsMissing() throws PlannerException {
        Plan plan = offices();
        Delivery delivery = new Arrival(plan, List.of(modules("Alder/P1", 4)), Set.of())
                .allot(new ScipSolver(), Progress.NONE);
        Map<Piece, Integer> three = new LinkedHashMap<>(Map.of(Fixtures.kind(8), 3));
        assertThrows(IllegalStateException.class,
                () -> new AllotmentAudit(three, delivery.lines()).check(delivery.now()));
        assertThrows(IllegalStateException.class, () -> new AllotmentAudit(Map.of(Fixtures.kind(8), 4),
                List.of()).check(delivery.now()));
        MachinePlan first = delivery.now().work().get(0);
        MachinePlan incomplete = new MachinePlan(first.machine(), first.target(),
                first.after().with("A1", Fixtures.kind(16)), first.outcome(), first.moves(), first.runsNow(),
                first.runsAfter(), first.obstacle(), first.labour(), first.workOrder());
        Plan broken = new Plan("x", plan.date(), plan.policy(), List.of(incomplete), plan.purchases(), List.of(),
                plan.spending(), plan.optimality(), List.of());
        assertThrows(IllegalStateException.class, () -> new AllotmentAudit(Map.of(Fixtures.kind(8), 4),
                delivery.lines()).check(broken));
    }
}
