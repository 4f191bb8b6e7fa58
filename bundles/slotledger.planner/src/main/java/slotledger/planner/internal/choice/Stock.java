package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import slotledger.model.module.Piece;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Shelf;

/**
 * All modules and fillers a plan can speak of, by kind, numbered, and where they can be had.
 *
 * @param pieces  those of offers, then of the shelf, then of the machines' sockets, then what their boards want in
 *                empty sockets
 * @param offers  that can be used, in file order
 * @param shelf   what is owned
 * @param numbers place of each piece in the list
 */
public record Stock(List<Piece> pieces, List<Offer> offers, Shelf shelf, Map<Piece, Integer> numbers) {

    public Stock {
        pieces = List.copyOf(pieces);
        offers = List.copyOf(offers);
        Objects.requireNonNull(shelf, "shelf");
        numbers = Map.copyOf(numbers);
    }

    /** Numbers the pieces of offers, shelf and classes. */
    public static Stock of(List<Offer> offers, Shelf shelf, List<MachineClass> classes) {
        Map<Piece, Integer> numbers = new LinkedHashMap<>();
        offers.forEach(offer -> numbers.putIfAbsent(offer.piece(), numbers.size()));
        shelf.pieces().keySet().forEach(piece -> numbers.putIfAbsent(piece, numbers.size()));
        for (MachineClass group : classes) {
            group.setup().board().sockets().forEach(slot -> group.now().in(slot.label()).piece()
                    .ifPresent(piece -> numbers.putIfAbsent(piece, numbers.size())));
        }
        classes.forEach(group -> group.setup().board().fill().blank()
                .ifPresent(blank -> numbers.putIfAbsent(blank, numbers.size())));
        return new Stock(new ArrayList<>(numbers.keySet()), offers, shelf, numbers);
    }

    public int number(Piece piece) {
        return numbers.get(piece);
    }

    /** Whether any of the kind are offered or on the shelf. */
    public boolean isOfferedOrOwned(Piece piece) {
        return shelf.count(piece) > 0 || offers.stream().anyMatch(offer -> offer.piece().equals(piece));
    }

    public List<Offer> offers(Piece piece) {
        return offers.stream().filter(offer -> offer.piece().equals(piece)).toList();
    }

    /** The same where an offer can't be bought; its piece keeps its number. */
    public Stock withoutOffer(String id) {
        return new Stock(pieces, offers.stream().filter(offer -> !offer.id().equals(id)).toList(), shelf, numbers);
    }
}
