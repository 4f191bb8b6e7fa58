package slotledger.model.difference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.Shelf;

/** Compares what can be bought, what is owned, and what is wanted. */
final class TradeTerms {

    private TradeTerms() {
    }

    static List<Term> offers(Market before, Market after) {
        Terms terms = new Terms();
        Map<String, Offer> then = byId(before);
        Map<String, Offer> now = byId(after);
        then.forEach((id, offer) -> {
            if (now.containsKey(id)) {
                compare(terms, offer, now.get(id));
            } else {
                terms.compare("offer " + id, (Object) text(offer), Terms.NONE);
            }
        });
        now.forEach((id, offer) -> {
            if (!then.containsKey(id)) {
                terms.compare("offer " + id, (Object) Terms.NONE, text(offer));
            }
        });
        terms.compare("terms of", suppliers(before), suppliers(after));
        return terms.list();
    }

    private static Map<String, Offer> byId(Market market) {
        Map<String, Offer> byId = new LinkedHashMap<>();
        market.offers().forEach(offer -> byId.put(offer.id(), offer));
        return byId;
    }

    private static void compare(Terms terms, Offer then, Offer now) {
        String of = " of " + then.id();
        terms.compare("price" + of, (Object) prices(then), prices(now));
        terms.compare("module" + of, (Object) then.piece().toString(), now.piece().toString());
        terms.compare("pack size" + of, (Object) then.packSize(), now.packSize());
        terms.compare("stock" + of, (Object) Terms.text(then.stock()), Terms.text(now.stock()));
        terms.compare("lead time in days" + of, (Object) Terms.text(then.leadDays()), Terms.text(now.leadDays()));
        terms.compare("last day" + of, (Object) Terms.text(then.validUntil()), Terms.text(now.validUntil()));
        terms.compare("tax" + of, (Object) Terms.text(then.tax()), Terms.text(now.tax()));
    }

    private static String text(Offer offer) {
        return offer.piece() + " for " + prices(offer);
    }

    private static String prices(Offer offer) {
        String steps = offer.steps().stream()
                .map(step -> step.perPack() + (step.fromPacks() == 1 ? "" : " from " + step.fromPacks()))
                .collect(Collectors.joining(", "));
        return offer.rule() == PriceRule.ALL_PACKS ? steps : steps + " (for the packs from there on)";
    }

    private static Map<String, String> suppliers(Market market) {
        Map<String, String> texts = new LinkedHashMap<>();
        market.suppliers().forEach((name, supplier) -> texts.put(name, "delivery " + Terms.text(supplier.shipping())
                + ", free from " + Terms.text(supplier.freeFrom()) + ", at least "
                + Terms.text(supplier.minimum())));
        return texts;
    }

    static List<Term> shelf(Shelf before, Shelf after) {
        Terms terms = new Terms();
        terms.compare("on the shelf:", counts(before), counts(after));
        return terms.list();
    }

    private static Map<String, String> counts(Shelf shelf) {
        Map<String, String> counts = new LinkedHashMap<>();
        shelf.pieces().forEach((piece, count) -> counts.put(piece.toString(), count.toString()));
        return counts;
    }

    static List<Term> policy(Optional<Policy> before, Optional<Policy> after) {
        Terms terms = new Terms();
        if (before.isPresent() && after.isPresent()) {
            terms.compare("currency", (Object) before.get().currency(), after.get().currency());
            terms.policy(before.get(), after.get());
            terms.compare("waves", (Object) waves(before.get()), waves(after.get()));
        } else {
            terms.compare("policy", (Object) (before.isPresent() ? "there" : Terms.NONE),
                    after.isPresent() ? "there" : Terms.NONE);
        }
        return terms.list();
    }

    private static String waves(Policy policy) {
        return policy.waves().isEmpty() ? Terms.NONE : policy.waves().stream()
                .map(wave -> wave.name() + " on " + wave.date() + " with a budget of " + Terms.text(wave.budget()))
                .collect(Collectors.joining(", "));
    }
}
