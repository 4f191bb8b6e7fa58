package slotledger.planner.internal.delivery;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Receipt;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;

/** Compares what arrived with the lines of an order. */
final class Receipts {

    private final List<Finding> findings = new ArrayList<>();
    private final Map<Purchase, int[]> counts = new LinkedHashMap<>();

    Receipts(Plan plan, List<Receipt> receipts) {
        plan.purchases().forEach(purchase -> counts.put(purchase, new int[2]));
        for (Receipt receipt : receipts) {
            count(receipt);
        }
    }

    List<Finding> findings() {
        return findings;
    }

    List<Delivery.Line> lines() {
        List<Delivery.Line> lines = new ArrayList<>();
        counts.forEach((purchase, count) -> lines.add(new Delivery.Line(purchase, count[0], count[1])));
        return lines;
    }

    private void count(Receipt receipt) {
        List<Purchase> meant = counts.keySet().stream().filter(purchase -> isMeant(purchase, receipt)).toList();
        if (meant.size() != 1) {
            boolean none = meant.isEmpty();
            findings.add(finding(receipt, none ? "receipt-unexpected" : "receipt-ambiguous", none
                            ? "The plan orders nothing of this part; the line was not counted."
                            : "The plan orders this part of several suppliers; the line was not counted.",
                    none ? "Correct the part number or supplier, or send it back; to use it, put it on the shelf list."
                            : "Name the supplier."));
            return;
        }
        int size = meant.get(0).offer().packSize();
        int arrived = receipt.modules().orElse(Math.multiplyExact(receipt.packs().orElse(0), size));
        if (receipt.unusable() > arrived) {
            findings.add(finding(receipt, "receipt-unusable", "More are said to be unusable (%d) than arrived (%d); the"
                    .formatted(receipt.unusable(), arrived) + " line was not counted.", "Correct the numbers."));
            return;
        }
        int[] count = counts.get(meant.get(0));
        count[0] = Math.addExact(count[0], arrived - receipt.unusable());
        count[1] = Math.addExact(count[1], receipt.unusable());
    }

    private static boolean isMeant(Purchase purchase, Receipt receipt) {
        String part = receipt.part().strip();
        boolean named = purchase.offer().id().equalsIgnoreCase(part)
                || purchase.offer().part().equalsIgnoreCase(part);
        String supplier = receipt.supplier().strip();
        return named && (supplier.isEmpty() || purchase.offer().supplier().equalsIgnoreCase(supplier));
    }

    private static Finding finding(Receipt receipt, String code, String message, String remedy) {
        return new Finding(Severity.ERROR, code, receipt.place(), Optional.empty(),
                (receipt.supplier() + " " + receipt.part()).strip(), message, "a line of the order", remedy);
    }
}
