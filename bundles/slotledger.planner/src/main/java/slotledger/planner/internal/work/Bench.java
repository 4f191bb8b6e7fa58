package slotledger.planner.internal.work;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.plan.Station;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Shelf;
import slotledger.planner.internal.model.Choice;

/**
 * What lies ready for machines while the work goes on: modules and fillers of the order set aside for their cost
 * centre, the shelf, and what was pulled so far. First in, first out.
 */
final class Bench {

    private record Reserve(Piece piece, String centre) {
    }

    private final Map<Reserve, Deque<Unit>> ordered = new HashMap<>();
    private final Map<Piece, Deque<Unit>> own = new LinkedHashMap<>();
    private final Map<Piece, Deque<Station>> debts = new HashMap<>();

    Bench(List<Offer> offers, Choice choice, Shelf shelf) {
        for (int offer = 0; offer < offers.size(); offer++) {
            for (int centre = 0; centre < choice.centres().size(); centre++) {
                Reserve reserve = new Reserve(offers.get(offer).piece(), choice.centres().get(centre));
                for (int count = choice.uses(offer, centre); count > 0; count--) {
                    ordered.computeIfAbsent(reserve, unused -> new ArrayDeque<>())
                            .add(new Unit(
                                    SlotContent.of(reserve.piece()), new Station.FromOrder(offers.get(offer).id())));
                }
            }
        }
        shelf.pieces().forEach((piece, count) -> {
            for (int i = 0; i < count; i++) {
                own(piece).add(new Unit(SlotContent.of(piece), new Station.OnShelf()));
            }
        });
    }

    private Deque<Unit> own(Piece piece) {
        return own.computeIfAbsent(piece, unused -> new ArrayDeque<>());
    }

    private Deque<Unit> ordered(Piece piece, String centre) {
        return ordered.computeIfAbsent(new Reserve(piece, centre), unused -> new ArrayDeque<>());
    }

    /** How many modules and fillers a machine still lacks, by kind; empty where it is ready. */
    Map<Piece, Integer> lacks(Job job) {
        Map<Piece, Integer> lacks = new LinkedHashMap<>();
        job.needs().forEach((piece, count) -> {
            int there = ordered(piece, job.options().group().costCentre()).size() + own(piece).size();
            if (there < count) {
                lacks.put(piece, count - there);
            }
        });
        return lacks;
    }

    /** Takes one for a slot; empty where none is there yet, and then the next one pulled goes there. */
    Optional<Unit> take(Piece piece, String centre, Station slot) {
        Unit unit = ordered(piece, centre).poll();
        if (unit == null) {
            unit = own(piece).poll();
        }
        if (unit == null) {
            debts.computeIfAbsent(piece, unused -> new ArrayDeque<>()).add(slot);
        } else {
            unit.goesTo(slot);
        }
        return Optional.ofNullable(unit);
    }

    /** Puts a pulled one down; a slot that waits for one gets it at once, and is then returned. */
    Optional<Station> put(Piece piece, Unit unit) {
        Deque<Station> waiting = debts.get(piece);
        if (waiting == null || waiting.isEmpty()) {
            own(piece).add(unit);
            return Optional.empty();
        }
        Station slot = waiting.poll();
        unit.goesTo(slot);
        return Optional.of(slot);
    }

    /** What nobody took. Fails where a slot still waits or an ordered module is not used. */
    List<Unit> rest() {
        if (debts.values().stream().anyMatch(waiting -> !waiting.isEmpty())
                || ordered.values().stream().anyMatch(units -> !units.isEmpty())) {
            throw new IllegalStateException("The modules of the plan must go up exactly.");
        }
        List<Unit> rest = new ArrayList<>();
        own.values().forEach(rest::addAll);
        return rest;
    }
}
