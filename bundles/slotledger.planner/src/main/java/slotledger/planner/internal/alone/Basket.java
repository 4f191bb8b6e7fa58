package slotledger.planner.internal.alone;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeSet;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceStep;
import slotledger.model.unit.Money;

/**
 * How a careful person buys so many modules of one kind: from one offer, up to its next price step where that is
 * cheaper, or from two; from more only where those have too few.
 */
final class Basket {

    private Basket() {
    }

    /** The lines, or nothing where all offers together have too few. */
    static Optional<List<Bill.Line>> of(List<Offer> offers, long modules) {
        if (modules == 0) {
            return Optional.of(List.of());
        }
        return oneOrTwo(offers, modules, true).or(() -> asManyAsItTakes(offers, modules));
    }

    private static Optional<List<Bill.Line>> oneOrTwo(List<Offer> offers, long modules, boolean two) {
        Optional<List<Bill.Line>> best = Optional.empty();
        for (Offer offer : offers) {
            for (int packs : tries(offer, modules)) {
                long missing = modules - (long) packs * offer.packSize();
                Optional<List<Bill.Line>> rest = missing <= 0 ? Optional.of(List.of())
                        : two ? oneOrTwo(without(offers, offer), missing, false) : Optional.empty();
                if (rest.isPresent()) {
                    List<Bill.Line> lines = new ArrayList<>(List.of(new Bill.Line(offer, packs)));
                    lines.addAll(rest.get());
                    if (best.isEmpty() || price(lines).compareTo(price(best.get())) < 0) {
                        best = Optional.of(lines);
                    }
                }
            }
        }
        return best;
    }

    /** Just enough packs, just too few, as many as a price step asks for, all there are. */
    private static TreeSet<Integer> tries(Offer offer, long modules) {
        int enough = Math.toIntExact(offer.packsFor(modules));
        TreeSet<Integer> tries = new TreeSet<>(List.of(enough, enough - 1));
        offer.steps().stream().map(PriceStep::fromPacks).filter(from -> from > enough).forEach(tries::add);
        int most = offer.stock().orElse(Integer.MAX_VALUE);
        OptionalInt stock = offer.stock();
        if (stock.isPresent() && stock.getAsInt() < enough) {
            tries.add(stock.getAsInt());
        }
        tries.removeIf(packs -> packs < 1 || packs > most);
        return tries;
    }

    private static Optional<List<Bill.Line>> asManyAsItTakes(List<Offer> offers, long modules) {
        List<Offer> cheapestFirst = new ArrayList<>(offers);
        cheapestFirst.sort(Comparator.comparingDouble(
                offer -> offer.perPack(1).minor() / (double) offer.packSize()));
        List<Bill.Line> lines = new ArrayList<>();
        long missing = modules;
        for (Offer offer : cheapestFirst) {
            long wanted = offer.packsFor(missing);
            int packs = Math.toIntExact(Math.min(wanted, offer.stock().orElse(Integer.MAX_VALUE)));
            if (packs > 0) {
                lines.add(new Bill.Line(offer, packs));
                missing = Math.max(0, missing - (long) packs * offer.packSize());
            }
        }
        return missing > 0 ? Optional.empty() : Optional.of(lines);
    }

    private static List<Offer> without(List<Offer> offers, Offer one) {
        return offers.stream().filter(offer -> offer != one).toList();
    }

    private static Money price(List<Bill.Line> lines) {
        return lines.stream().map(Bill.Line::price).reduce(Money::plus).orElseThrow();
    }
}
