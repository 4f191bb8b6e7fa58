package slotledger.planner.internal;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.plan.Purchase;
import slotledger.model.trade.Buying;
import slotledger.model.trade.Offer;
import slotledger.planner.PlanRequest;

/** What was assumed of offers that are bought. */
final class PurchaseRemarks {

    private PurchaseRemarks() {
    }

    static List<Finding> of(PlanRequest request, List<Purchase> lines) {
        Buying buying = request.policy().buying();
        List<Finding> remarks = new ArrayList<>();
        for (Purchase line : lines) {
            Offer offer = line.offer();
            offer.validUntil().filter(last -> last.isBefore(request.date()))
                    .ifPresent(last -> remarks.add(assumed(offer, last, request.date())));
            buying.neededBy().filter(day -> offer.leadDays().isEmpty())
                    .ifPresent(day -> remarks.add(unknownDay(offer, day)));
        }
        return remarks;
    }

    private static Finding assumed(Offer offer, LocalDate last, LocalDate date) {
        return remark(offer, "price-assumed",
                "The offer %s held until %s; the plan assumes its price on %s, as the policy allows."
                        .formatted(offer.id(), last, date),
                "Ask %s for a new offer before ordering, and plan again if the price is another."
                        .formatted(offer.supplier()));
    }

    private static Finding unknownDay(Offer offer, LocalDate day) {
        return remark(offer, "lead-time-unknown",
                "Nobody says how long %s takes to arrive; it is needed by %s.".formatted(offer.id(), day),
                "Ask %s before ordering.".formatted(offer.supplier()));
    }

    private static Finding remark(Offer offer, String code, String message, String remedy) {
        return new Finding(Severity.WARNING, code, offer.place(), Optional.empty(), "", message, "", remedy);
    }
}
