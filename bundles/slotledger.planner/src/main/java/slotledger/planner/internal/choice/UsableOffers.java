package slotledger.planner.internal.choice;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Currency;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Money;
import slotledger.planner.PlanRequest;

/**
 * The offers that can be used, and why others can't.
 *
 * @param offers  in file order
 * @param remarks one for each offer left out
 */
public record UsableOffers(List<Offer> offers, List<Finding> remarks) {

    public UsableOffers {
        offers = List.copyOf(offers);
        remarks = List.copyOf(remarks);
    }

    public static UsableOffers of(PlanRequest request) {
        List<Offer> usable = new ArrayList<>();
        List<Finding> remarks = new ArrayList<>();
        for (Offer offer : request.market().offers()) {
            Optional<Finding> hindrance = expired(offer, request)
                    .or(() -> foreign(offer, request))
                    .or(() -> late(offer, request))
                    .or(() -> forbidden(offer, request.choices()));
            hindrance.ifPresentOrElse(remarks::add, () -> usable.add(offer));
        }
        return new UsableOffers(usable, remarks);
    }

    private static Optional<Finding> expired(Offer offer, PlanRequest request) {
        if (request.policy().buying().keepPrices()) {
            return Optional.empty();
        }
        return offer.validUntil().filter(last -> last.isBefore(request.date())).map(last -> remark(
                offer,
                "offer-expired",
                "The offer %s (%s) held until %s and is not used on %s: what it costs then is not known."
                        .formatted(offer.id(), offer.piece(), last, request.date()),
                ("Ask %s for a new offer, plan for an earlier day, or write \"prices after validity: keep\" into the"
                        + " policy to reckon with the price of then.").formatted(offer.supplier())));
    }

    private static Optional<Finding> late(Offer offer, PlanRequest request) {
        Optional<LocalDate> needed = request.policy().buying().neededBy();
        return offer.arrival(request.date()).filter(day -> needed.filter(day::isAfter).isPresent()).map(day -> remark(
                offer,
                "offer-too-late",
                "The offer %s (%s), ordered on %s, arrives by %s and is needed by %s; it is not used."
                        .formatted(offer.id(), offer.piece(), request.date(), day, needed.get()),
                "Ask %s for faster delivery, or allow a later day (needed by).".formatted(offer.supplier())));
    }

    private static Optional<Finding> foreign(Offer offer, PlanRequest request) {
        Supplier terms = request.market().suppliers().get(offer.supplier());
        Currency currency = request.policy().currency();
        return Stream.concat(
                        offer.steps().stream().map(PriceStep::perPack),
                        Stream.of(terms.shipping(), terms.freeFrom(), terms.minimum()).flatMap(Optional::stream))
                .map(Money::currency)
                .filter(other -> !other.equals(currency))
                .findFirst()
                .map(other -> remark(
                        offer,
                        "offer-currency",
                        "The offer %s (%s) or its delivery is in %s, the policy counts in %s; it is not used."
                                .formatted(offer.id(), offer.piece(), other, currency),
                        "Ask %s for a price in %s, or write \"exchange rates: {%s: ...}\" into the policy."
                                .formatted(offer.supplier(), currency, other)));
    }

    private static Optional<Finding> forbidden(Offer offer, Choices choices) {
        return choices.forbids(offer).map(taste -> new Finding(Severity.NOTE, "offer-forbidden", offer.place(),
                Optional.empty(), "",
                "The offer %s (%s) is not used: somebody decided \"%s\".".formatted(offer.id(), offer.piece(), taste),
                        "",
                "Nothing; or take the line out of the choices (%s).".formatted(taste.place())));
    }

    private static Finding remark(Offer offer, String code, String message, String remedy) {
        return new Finding(Severity.WARNING, code, offer.place(), Optional.empty(), "", message, "", remedy);
    }
}
