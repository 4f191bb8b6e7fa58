package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.board.RedundancyTerms;
import slotledger.model.board.RedundancyTerms.FillSet;
import slotledger.model.board.RedundancyTerms.Share;
import slotledger.model.machine.Machine;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.ortools.internal.ScipSolver;
import slotledger.planner.PlannerException;
import slotledger.rules.standard.StandardRules;

class MirroredMachinesTest {

    private final Fixtures fixtures = new Fixtures();

    private Board mirroring(Board plain, FillSet... sets) {
        RedundancyTerms terms = new RedundancyTerms(Redundancy.MIRRORED, Optional.of(new Share(1, 2)), Set.of(),
                List.of(sets), OptionalInt.empty());
        Board board = new Board(plain.id(), plain.maker(), plain.model(), plain.aliases(), plain.form(),
                plain.processorSockets(), plain.processors(), plain.channels(), plain.slots(), plain.takes(),
                plain.largestTotal(), plain.addressable(), plain.fill(), plain.banks(), List.of(terms),
                plain.interleave(), plain.rateLimits(), plain.notes(), plain.source(), plain.sources());
        fixtures.boards.put(board.id(), board);
        return board;
    }

    private void mirror(int machine) {
        Machine plain = fixtures.machines.get(machine);
        fixtures.machines.set(machine, new Machine(plain.tag(), plain.serial(), plain.where(), plain.costCentre(),
                plain.role(), plain.board(), plain.processors(), plain.processor(), plain.operatingSystem(),
                Redundancy.MIRRORED, plain.population(), plain.place()));
    }

    private Plan plan() throws PlannerException {
        return new Planning(StandardRules.create(), new ScipSolver()).plan(fixtures.request(), Progress.NONE);
    }

    @Test
    void aMirroredMachineNeedsTwiceAsMuchAsOneOfTheSameBoardThatIsNot() throws PlannerException {
        Board board = mirroring(fixtures.board("b", 4, 8, 32, 1));
        fixtures.machine("A", board, "lab");
        fixtures.machine("B", board, "lab");
        mirror(1);
        fixtures.target("lab", 16, 1);
        fixtures.shelf.put(Fixtures.kind(8), 8);

        assertEquals(List.of(2, 4), plan().machines().stream().map(each -> each.after().modules().size()).toList());
    }

    @Test
    void theSetsOfMirroredMemoryAreFilledOnLargeBoards() throws PlannerException {
        Board board = mirroring(fixtures.board("b", 6, 8, 48, 1), new FillSet(1, List.of("A3", "B3")),
                new FillSet(1, List.of("A2", "B2")), new FillSet(1, List.of("A1", "B1")));
        fixtures.machine("A", board, "lab");
        mirror(0);
        fixtures.target("lab", 8, 1);
        fixtures.shelf.put(Fixtures.kind(8), 2);

        assertEquals(List.of("A3", "B3"), plan().machines().get(0).after().contents().entrySet().stream()
                .filter(slot -> !slot.getValue().isEmpty())
                .map(slot -> slot.getKey())
                .toList());
    }
}
