package slotledger.planner.internal.order;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.Map;
import slotledger.model.module.Piece;
import slotledger.model.plan.Station;
import slotledger.model.trade.Shelf;

/** What is there before the work begins: modules and fillers of the order, set aside by cost centre, and the shelf. */
public final class Supplies {

    private record Reserve(Piece piece, String centre) {
    }

    private static final class Lot {
        private final Station from;
        private int count;

        private Lot(Station from, int count) {
            this.from = from;
            this.count = count;
        }
    }

    private final Map<Reserve, Deque<Lot>> ordered = new HashMap<>();
    private final Map<Piece, Integer> shelf;

    public Supplies(Shelf shelf) {
        this.shelf = new LinkedHashMap<>(shelf.pieces());
    }

    /** Sets bought ones aside for the machines of a cost centre; they are taken in the order in which they came. */
    public void order(Piece piece, String centre, String offer, int count) {
        if (count > 0) {
            ordered.computeIfAbsent(new Reserve(piece, centre), unused -> new ArrayDeque<>())
                    .add(new Lot(new Station.FromOrder(offer), count));
        }
    }

    int ordered(Piece piece, String centre) {
        Deque<Lot> lots = ordered.get(new Reserve(piece, centre));
        return lots == null ? 0 : lots.stream().mapToInt(lot -> lot.count).sum();
    }

    int shelf(Piece piece) {
        return shelf.getOrDefault(piece, 0);
    }

    /** Takes a bought one; says where it comes from. */
    Station takeOrdered(Piece piece, String centre) {
        Deque<Lot> lots = ordered.get(new Reserve(piece, centre));
        Lot lot = lots.element();
        lot.count--;
        if (lot.count == 0) {
            lots.remove();
        }
        return lot.from;
    }

    void takeFromShelf(Piece piece) {
        shelf.merge(piece, -1, Integer::sum);
    }

    /** What nobody took from the shelf. Fails where something of the order was not taken. */
    Map<Piece, Integer> rest() {
        if (ordered.values().stream().anyMatch(lots -> !lots.isEmpty())) {
            throw new IllegalStateException("The modules of the plan must go up exactly.");
        }
        Map<Piece, Integer> rest = new LinkedHashMap<>(shelf);
        rest.values().removeIf(count -> count == 0);
        return rest;
    }
}
