package slotledger.app.internal;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.board.Takes;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Population;
import slotledger.model.module.Piece;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Shelf;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.LookAlike;
import slotledger.rules.LookAlike.Mistake;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** What is offered or in stock and easily taken for what boards of the fleet want; one finding for two such things. */
final class Confusions {

    /** So many pieces and boards are named; the others are counted. */
    private static final int NAMED = 3;

    private final MemoryRules rules;
    private final Map<String, Danger> dangers = new LinkedHashMap<>();

    Confusions(MemoryRules rules) {
        this.rules = rules;
    }

    /** One thing that is wrong where the other is wanted. */
    private record Danger(LookAlike alike, Set<Piece> pieces, Set<Board> boards, Place place) {
    }

    List<Finding> findings(Fleet fleet, Market market, Shelf shelf, Progress progress) {
        Set<Board> boards = new LinkedHashSet<>();
        fleet.machines().forEach(machine -> boards.add(fleet.boardOf(machine)));
        Map<Piece, Place> pieces = new LinkedHashMap<>();
        for (Offer offer : market.offers()) {
            pieces.putIfAbsent(offer.piece(), offer.place());
        }
        shelf.pieces().keySet().forEach(piece -> pieces.putIfAbsent(piece, Place.NOWHERE));
        pieces.forEach((piece, place) -> {
            progress.check();
            boards.forEach(board -> look(piece, place, board));
        });
        Map<String, List<Danger>> both = new LinkedHashMap<>();
        dangers.values().forEach(danger ->
                both.computeIfAbsent(danger.alike().id(), id -> new ArrayList<>()).add(danger));
        return both.values().stream().map(Confusions::finding).toList();
    }

    private void look(Piece piece, Place place, Board board) {
        for (Takes takes : board.takes()) {
            Optional<Slot> socket = board.sockets().stream().filter(slot -> takes.holdsFor(slot.label())).findFirst();
            for (LookAlike alike : rules.wrongFor(piece, takes)) {
                if (socket.isPresent() && isBlocked(piece, board, socket.get(), alike)) {
                    Danger danger = dangers.computeIfAbsent(alike.id() + " " + alike.one(), key ->
                            new Danger(alike, new LinkedHashSet<>(), new LinkedHashSet<>(), place));
                    danger.pieces().add(piece);
                    danger.boards().add(board);
                }
            }
        }
    }

    private boolean isBlocked(Piece piece, Board board, Slot socket, LookAlike alike) {
        Population alone = Population.empty(board).with(socket.label(), piece);
        Verdict verdict = rules.judge(Setup.of(board, alone));
        return verdict.reasons(Weight.BLOCKS).stream().anyMatch(reason ->
                alike.rules().contains(reason.rule()) && reason.slots().contains(socket.label()));
    }

    private static Finding finding(List<Danger> dangers) {
        StringBuilder message = new StringBuilder();
        Set<Piece> seen = new LinkedHashSet<>();
        Severity severity = Severity.NOTE;
        for (Danger danger : dangers) {
            Mistake mistake = danger.alike().oneForOther().orElseThrow();
            seen.addAll(danger.pieces());
            severity = goesIn(mistake) ? Severity.WARNING : severity;
            boolean said = message.indexOf(mistake.sentence()) >= 0;
            message.append(message.isEmpty() ? "" : " ").append("%s looks like %s and is wrong for %s: %s.".formatted(
                    capital(danger.alike().one()), danger.alike().other(),
                    some(danger.boards().stream().map(Board::name).toList()), mistake.sight().text()));
            message.append(said ? "" : " " + mistake.sentence());
        }
        return new Finding(severity, "look-alike", dangers.get(0).place(), Optional.empty(), some(seen),
                message.toString(), "", dangers.get(0).alike().howToTell());
    }

    /** A module that doesn't go in is noticed at once. */
    private static boolean goesIn(Mistake mistake) {
        return switch (mistake.sight()) {
            case DOES_NOT_GO_IN, RUNS_SLOWER, NOT_CHECKED -> false;
            case NO_START, HALF_OR_LESS, NOT_SEEN, DAMAGE_POSSIBLE -> true;
        };
    }

    private static String some(Collection<?> all) {
        String named = String.join("; ", all.stream().limit(NAMED).map(Object::toString).toList());
        return all.size() <= NAMED ? named : "%s and %d more".formatted(named, all.size() - NAMED);
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }
}
