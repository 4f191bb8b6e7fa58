package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.module.Piece;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Outcome;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlannerException;
import slotledger.rules.fixture.BoardText;
import slotledger.rules.fixture.ModuleText;

/** Boards with four RIMM sockets in pairs, of which none may be empty. */
class FillersTest {

    private static final Piece SLOW = ModuleText.piece("64MB RDRAM-600 RIMM_184 x16 128Mbit non-ECC 53ns");
    private static final Piece FAST = ModuleText.piece("256MB RDRAM-800 RIMM_184 x16 256Mbit non-ECC 45ns");
    private static final Piece FILLER = Filler.CONTINUITY_184;

    private final Fixtures made = new Fixtures();
    private final Board board = Worlds.RDRAM.board("rd", new Random(1));

    FillersTest() {
        made.add(board);
        made.target("pc", ModuleText.capacity("512MB"), 1);
    }

    /** Slots RIMM1, RIMM3, RIMM2, RIMM4, as the board lists them. */
    private void machine(String tag, Piece bank0, Piece bank1) {
        made.machine(tag, board, "pc", bank0, bank1, bank0, bank1);
    }

    private Plan plan() throws PlannerException {
        return new Planning(EveryLaw.create(), new ScipSolver()).plan(made.request(), Progress.NONE);
    }

    private static MachinePlan of(Plan plan, String tag) {
        return plan.find(new AssetTag(tag)).orElseThrow();
    }

    private static List<Move> fillersOf(MachinePlan machine) {
        return machine.moves().stream().filter(move -> move.content().equals(SlotContent.of(FILLER))).toList();
    }

    @Test
    void whatAPairSetsFreeAnotherMachineGets() throws PlannerException {
        machine("A1", FAST, FILLER);
        made.targets.clear();
        made.target("pc", ModuleText.capacity("1GB"), 2);
        made.target("old", ModuleText.capacity("512MB"), 1);
        made.machine("B1", board, "old", SLOW, SLOW, SLOW, SLOW);
        made.offer("Dunmarsk", FAST, 2, 2, 1, 5000);
        Plan plan = plan();
        assertEquals(Outcome.REACHES_TARGET, of(plan, "A1").outcome());
        assertEquals(Outcome.REACHES_TARGET, of(plan, "B1").outcome());
        assertEquals(2, fillersOf(of(plan, "B1")).size());
        assertTrue(fillersOf(of(plan, "B1")).stream().allMatch(move ->
                move.from() instanceof Station.InSlot from && from.machine().equals(new AssetTag("A1"))));
        assertTrue(of(plan, "A1").workOrder() < of(plan, "B1").workOrder());
    }

    @Test
    void fillersAreBoughtWithSparesAndCountAsHandled() throws PlannerException {
        machine("A1", SLOW, SLOW);
        made.sparePercent = 50;
        made.offer("Dunmarsk", FAST, 2, -1, 1, 5000);
        made.offer("Dunmarsk", FILLER, 1, -1, 1, 300);
        Plan plan = plan();
        assertEquals(3, plan.purchases().stream()
                .filter(line -> line.offer().piece().equals(FILLER)).findFirst().orElseThrow().modules());
        assertEquals(8, of(plan, "A1").moves().size());
        assertEquals(500 + 8 * 100, of(plan, "A1").labour().minor());
    }

    @Test
    void fillersOfTheShelfAreTakenFirstAndTheRestStays() throws PlannerException {
        machine("A1", SLOW, SLOW);
        made.shelf.put(FILLER, 3);
        made.offer("Dunmarsk", FAST, 2, -1, 1, 5000);
        Plan plan = plan();
        assertEquals(Outcome.REACHES_TARGET, of(plan, "A1").outcome());
        assertEquals(List.of(1), plan.leftovers().stream()
                .filter(left -> left.content().equals(SlotContent.of(FILLER))
                        && left.origin() == Leftover.Origin.SHELF)
                .map(Leftover::count).toList());
    }

    @Test
    void aMachineThatOnlyLacksFillersSaysSo() throws PlannerException {
        Board small = BoardText.board("none", """
                channel A 1 RIMM1 RIMM3
                channel B 1 RIMM2 RIMM4
                takes RDRAM RIMM_184 ecc=USED
                total 512MB
                bank 0 RIMM1 RIMM2
                bank 1 RIMM3 RIMM4
                fill blank=CONTINUITY_184
                """);
        made.add(small);
        made.machine("A1", small, "pc", SLOW, SLOW, SLOW, SLOW);
        made.offer("Dunmarsk", FAST, 2, 1, 1, 5000);
        Obstacle obstacle = of(plan(), "A1").obstacle().orElseThrow();
        assertEquals(Obstacle.Kind.NO_MODULE, obstacle.kind());
        assertEquals("With 2 x " + FAST + " it would reach its target, but its empty sockets want 2 x 184-pin"
                + " continuity module, which can't be had; it has 256 MB usable memory instead of 512 MB.",
                obstacle.message());
        assertEquals("An offer of 2 x 184-pin continuity module.", obstacle.freedBy());
    }

    @Test
    void aMachineForWhichTooFewFillersAreLeftSaysHowMany() throws PlannerException {
        machine("A1", SLOW, SLOW);
        made.offer("Dunmarsk", FAST, 2, 1, 1, 5000);
        made.offer("Dunmarsk", FILLER, 1, 1, 1, 300);
        Obstacle obstacle = of(plan(), "A1").obstacle().orElseThrow();
        assertEquals(Obstacle.Kind.STOCK, obstacle.kind());
        assertTrue(obstacle.message().contains("missing: 1 x 184-pin continuity module"), obstacle.message());
    }
}
