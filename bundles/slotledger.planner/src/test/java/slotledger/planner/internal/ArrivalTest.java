package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Receipt;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.delivery.Arrival;
import slotledger.rules.standard.StandardRules;

class ArrivalTest {

    private final Fixtures fixtures = new Fixtures();
    private Plan plan;

    @BeforeEach
    void planFiveMachines() throws PlannerException {
        Board board = fixtures.board("b", 2, 16, 32, 1);
        for (String tag : List.of("M1", "M2", "M3", "M4")) {
            fixtures.machine(tag, board, "office", Fixtures.kind(4), null);
        }
        fixtures.machine("U1", board, "urgent", Fixtures.kind(4), null);
        fixtures.target("office", 12, 1);
        fixtures.target("urgent", 12, 5);
        fixtures.offer("Alder", Fixtures.kind(8), 1, -1, 1, 2000);
        plan = new Planning(StandardRules.create(), new ScipSolver()).plan(fixtures.request(), Progress.NONE);
    }

    private Delivery arrived(Set<AssetTag> done, Receipt... receipts) throws PlannerException {
        return new Arrival(plan, List.of(receipts), done).allot(new ScipSolver(), Progress.NONE);
    }

    private Receipt modules(int count, int unusable) {
        return new Receipt("", plan.purchases().get(0).offer().part(), OptionalInt.empty(), OptionalInt.of(count),
                unusable, Place.ofRow("received.csv", "", 2));
    }

    private static List<String> now(Delivery delivery) {
        return delivery.now().work().stream().map(work -> work.machine().tag().value()).toList();
    }

    @Test
    void theMostUrgentMachineIsDoneFirstWhereModulesAreShort() throws PlannerException {
        Delivery delivery = arrived(Set.of(), modules(2, 1));
        assertEquals(List.of("U1"), now(delivery));
        assertEquals(4, delivery.waiting().size());
        assertEquals(Delivery.State.SHORT, delivery.lines().get(0).state());
        assertEquals(4, delivery.lines().get(0).missing());
    }

    @Test
    void machinesThatAreDoneKeepWhatTheyTook() throws PlannerException {
        Delivery delivery = arrived(Set.of(new AssetTag("M1"), new AssetTag("U1")), modules(3, 0));
        assertEquals(1, now(delivery).size());
        assertEquals(2, delivery.waiting().size());
        assertThrows(PlannerException.class, () -> arrived(Set.of(new AssetTag("M1"))));
    }

    @Test
    void allThatWasOrderedServesAllMachines() throws PlannerException {
        Delivery delivery = arrived(Set.of(), modules(5, 0));
        assertTrue(delivery.isComplete());
        assertEquals(5, now(delivery).size());
        assertEquals(List.of(), delivery.waiting());
    }

    @Test
    void whatNobodyOrderedIsNamedWithItsPlace() throws PlannerException {
        Delivery delivery = arrived(Set.of(), new Receipt("", "X-1", OptionalInt.of(1), OptionalInt.empty(), 0,
                Place.ofRow("received.csv", "", 7)));
        assertEquals("receipt-unexpected", delivery.findings().get(0).code());
        assertTrue(delivery.findings().get(0).toString().contains("received.csv, line 7"));
        assertEquals(List.of(), now(delivery));
    }

    @Test
    void noModuleIsAllottedTwiceHoweverLittleArrives() throws PlannerException {
        Fixtures made = LargeFleets.of(60, 5);
        plan = new Planning(StandardRules.create(), new ScipSolver()).plan(made.request(), Progress.NONE);
        Random random = new Random(3);
        for (int round = 0; round < 20; round++) {
            Receipt[] receipts = plan.purchases().stream().map(line -> new Receipt("", line.offer().id(),
                    OptionalInt.empty(), OptionalInt.of(random.nextInt(line.modules() + 1)), 0, Place.NOWHERE))
                    .toArray(Receipt[]::new);
            Delivery delivery = arrived(Set.of(), receipts);
            for (Delivery.Line line : delivery.lines()) {
                long used = delivery.now().work().stream().flatMap(work -> work.moves().stream())
                        .filter(move -> move.from().equals(new Station.FromOrder(line.purchase().offer().id())))
                        .count();
                assertTrue(used <= line.usable(), line.purchase().offer().id());
            }
            Set<Station> left = delivery.now().work().stream().flatMap(ArrivalTest::entering)
                    .map(Move::from).filter(Station.InSlot.class::isInstance).collect(Collectors.toSet());
            long moves = delivery.now().work().stream().flatMap(ArrivalTest::entering)
                    .filter(move -> move.from() instanceof Station.InSlot).count();
            assertEquals(left.size(), moves, "each pulled module goes to one place");
            assertEquals(plan.work().size(), now(delivery).size() + delivery.waiting().size());
        }
    }

    private static Stream<Move> entering(MachinePlan work) {
        return work.moves().stream().filter(move -> move.to() instanceof Station.InSlot to
                && to.machine().equals(work.machine().tag()));
    }
}
