package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.Move;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Station;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.model.Choice;

/**
 * The lines of the order.
 *
 * @param lines     by supplier and part
 * @param leftovers spares and rests of packs
 */
public record Purchases(List<Purchase> lines, List<Leftover> leftovers) {

    public Purchases {
        lines = List.copyOf(lines);
        leftovers = List.copyOf(leftovers);
    }

    /** The order for a choice, with its uses in the order of work. */
    public static Purchases of(Stock stock, Choice choice, Expansion expansion, Policy policy) {
        Map<String, Map<AssetTag, Integer>> uses = uses(expansion);
        Map<Piece, Integer> spares = spares(stock, uses, policy);
        Map<String, Purchase> lines = new TreeMap<>();
        Map<Piece, Integer> over = new LinkedHashMap<>();
        for (int number = 0; number < stock.offers().size(); number++) {
            Offer offer = stock.offers().get(number);
            int packs = choice.packs(number);
            if (packs > 0) {
                Map<AssetTag, Integer> used = uses.getOrDefault(offer.id(), Map.of());
                int free = packs * offer.packSize() - used.values().stream().mapToInt(Integer::intValue).sum();
                int spare = Math.min(free, spares.get(offer.piece()));
                spares.merge(offer.piece(), -spare, Integer::sum);
                over.merge(offer.piece(), free, Integer::sum);
                lines.put(offer.supplier() + "\n" + offer.part() + "\n" + offer.id(),
                        new Purchase(offer, packs, lines(used, expansion), spare, free - spare));
            }
        }
        List<Leftover> leftovers = new ArrayList<>();
        over.forEach((piece, count) -> {
            if (count > 0) {
                leftovers.add(new Leftover(
                        SlotContent.of(piece), count, Leftover.Origin.BOUGHT, new Station.OnShelf()));
            }
        });
        return new Purchases(List.copyOf(lines.values()), leftovers);
    }

    private static Map<String, Map<AssetTag, Integer>> uses(Expansion expansion) {
        Map<String, Map<AssetTag, Integer>> uses = new HashMap<>();
        for (AssetTag tag : expansion.inWorkOrder()) {
            for (Move move : expansion.moves().get(tag)) {
                if (move.from() instanceof Station.FromOrder order) {
                    uses.computeIfAbsent(order.offer(), unused -> new LinkedHashMap<>()).merge(tag, 1, Integer::sum);
                }
            }
        }
        return uses;
    }

    private static Map<Piece, Integer> spares(
            Stock stock, Map<String, Map<AssetTag, Integer>> uses, Policy policy) {
        Map<Piece, Integer> used = new HashMap<>();
        for (Offer offer : stock.offers()) {
            int count = uses.getOrDefault(offer.id(), Map.of()).values().stream().mapToInt(Integer::intValue).sum();
            used.merge(offer.piece(), count, Integer::sum);
        }
        used.replaceAll((piece, count) -> policy.spares(count));
        return used;
    }

    private static List<Purchase.Use> lines(Map<AssetTag, Integer> used, Expansion expansion) {
        return used.entrySet().stream()
                .map(use -> new Purchase.Use(
                        use.getKey(), expansion.costCentre(use.getKey()), use.getValue()))
                .toList();
    }
}
