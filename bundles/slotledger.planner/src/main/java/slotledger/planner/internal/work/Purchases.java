package slotledger.planner.internal.work;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
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

    /** What machines use of one offer, in the order of work. */
    private static final class Uses {
        private final List<Purchase.Use> lines = new ArrayList<>();
        private int machine = -1;
        private int count;
        private int all;

        private void add(int user, Expansion expansion) {
            if (user != machine) {
                close(expansion);
                machine = user;
            }
            count++;
            all++;
        }

        private void close(Expansion expansion) {
            if (count > 0) {
                lines.add(new Purchase.Use(
                        expansion.machines().get(machine).tag(), expansion.costCentre(machine), count));
                count = 0;
            }
        }
    }

    /** The order for a choice, with its uses in the order of work. */
    public static Purchases of(Stock stock, Choice choice, Expansion expansion, Policy policy) {
        Map<String, Uses> uses = uses(stock, expansion);
        Map<Piece, Integer> spares = spares(stock, uses, policy);
        Map<String, Purchase> lines = new TreeMap<>();
        Map<Piece, Integer> over = new LinkedHashMap<>();
        for (int number = 0; number < stock.offers().size(); number++) {
            Offer offer = stock.offers().get(number);
            int packs = choice.packs(number);
            if (packs > 0) {
                Uses used = uses.get(offer.id());
                int free = packs * offer.packSize() - used.all;
                int spare = Math.min(free, spares.get(offer.piece()));
                spares.merge(offer.piece(), -spare, Integer::sum);
                over.merge(offer.piece(), free, Integer::sum);
                lines.put(offer.supplier() + "\n" + offer.part() + "\n" + offer.id(),
                        new Purchase(offer, packs, used.lines, spare, free - spare));
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

    private static Map<String, Uses> uses(Stock stock, Expansion expansion) {
        Map<String, Uses> uses = new HashMap<>();
        stock.offers().forEach(offer -> uses.put(offer.id(), new Uses()));
        for (int machine : expansion.inWorkOrder()) {
            for (Move move : expansion.moves(machine)) {
                if (move.from() instanceof Station.FromOrder order) {
                    uses.get(order.offer()).add(machine, expansion);
                }
            }
        }
        uses.values().forEach(each -> each.close(expansion));
        return uses;
    }

    private static Map<Piece, Integer> spares(Stock stock, Map<String, Uses> uses, Policy policy) {
        Map<Piece, Integer> used = new HashMap<>();
        stock.offers().forEach(offer -> used.merge(offer.piece(), uses.get(offer.id()).all, Integer::sum));
        used.replaceAll((piece, count) -> policy.spares(count));
        return used;
    }
}
