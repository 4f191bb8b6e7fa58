package slotledger.app.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import slotledger.app.Trial;
import slotledger.model.board.Banks;
import slotledger.model.board.Board;
import slotledger.model.board.Interleave;
import slotledger.model.board.Redundancy;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.Whereabouts;
import slotledger.model.module.Generation;
import slotledger.model.source.Place;
import slotledger.model.unit.Capacity;
import slotledger.model.verdict.Weight;
import slotledger.rules.standard.StandardRules;

/** On a board that allows S1, S1 with S3, and all four sockets. */
class TrialsTest {

    @Test
    void aSocketAloneIsTriedWithAllElseAsItIs() {
        Population now = Population.empty(board(64)).with("S1", MatrixMakerTest.PLAIN);
        Trial trial = asked(trials(board(64), now), "S3");
        assertEquals(List.of("S3"), trial.filled());
        assertEquals(MatrixMakerTest.PLAIN, trial.population().in("S1").module().orElseThrow());
    }

    @Test
    void whereASocketAloneIsNotAllowedTheOthersOfItsRowAreFilledToo() {
        List<Trial> trials = trials(board(64), Population.empty(board(64)));
        assertEquals(List.of("S1", "S3"), asked(trials, "S3").filled());
        Trial all = asked(trials, "S2");
        assertEquals(List.of("S2", "S4"), all.slots(), "sockets that need the same ones are tried together");
        assertEquals(List.of("S1", "S2", "S3", "S4"), all.filled());
    }

    @Test
    void onlyWhereNothingElseHelpsAllOthersAreTakenOut() {
        // All four sockets with this module are more than 16 GB, so that the old module must leave.
        Population now = Population.empty(board(16)).with("S4", MatrixMakerTest.PLAIN.with(Generation.DDR3));
        Trial trial = asked(trials(board(16), now), "S1");
        assertEquals(false, trial.othersStay());
        assertEquals(true, trial.population().in("S4").isEmpty());
        assertEquals(true, trial.verdict().weight().compareTo(Weight.BLOCKS) < 0);
    }

    @Test
    void whatIsBlockedAnywayIsShownAlone() {
        List<Trial> trials = new Trials(StandardRules.create(), fleet(board(64), Population.empty(board(64))),
                machine(board(64), Population.empty(board(64))), MatrixMakerTest.PLAIN.with(Generation.DDR5)).all();
        assertEquals(List.of("S2"), asked(trials, "S2").filled());
        assertEquals(5, trials.size(), "four sockets, and all of them");
    }

    private static Trial asked(List<Trial> trials, String socket) {
        return trials.stream().filter(trial -> trial.slots().contains(socket)).findFirst().orElseThrow();
    }

    private static List<Trial> trials(Board board, Population now) {
        return new Trials(StandardRules.create(), fleet(board, now), machine(board, now), MatrixMakerTest.PLAIN).all();
    }

    private static Fleet fleet(Board board, Population now) {
        return new Fleet(List.of(machine(board, now)), Map.of(board.id(), board));
    }

    private static Machine machine(Board board, Population now) {
        return new Machine(new AssetTag("A"), "", new Whereabouts("", ""), "", "lab", board.id(), 1, Optional.empty(),
                Optional.empty(), Redundancy.NONE, now, Place.NOWHERE);
    }

    private static Board board(int largestTotal) {
        Board board = MatrixMakerTest.board();
        return new Board(board.id(), board.maker(), board.model(), board.aliases(), board.form(), 1, List.of(),
                board.channels(), board.sockets(), board.takes(), Optional.of(Capacity.ofGiB(largestTotal)),
                Optional.empty(), board.fill(), Banks.NONE, List.of(), Interleave.FLEXIBLE, List.of(), List.of(),
                board.source(), Map.of());
    }
}
