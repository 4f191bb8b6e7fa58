package slotledger.cli.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import slotledger.model.plan.Figures;
import slotledger.model.unit.Money;

/** What a plan comes to, as facts and compared with another. */
final class FiguresText {

    private FiguresText() {
    }

    static Map<String, Object> facts(Figures figures) {
        Map<String, Object> facts = new LinkedHashMap<>();
        facts.put("onTarget", figures.onTarget());
        facts.put("weight", figures.weight());
        facts.put("weightBound", figures.weightBound());
        facts.put("payable", figures.payable().amount().toPlainString());
        facts.put("cost", figures.cost().amount().toPlainString());
        facts.put("costBound", figures.costBound().amount().toPlainString());
        facts.put("proven", figures.isProven());
        return facts;
    }

    /** "EUR 12.00 more", "EUR 3.00 less", "the same cost". */
    static String difference(Money money, Money than) {
        int compared = money.compareTo(than);
        return compared == 0 ? "the same cost"
                : compared > 0 ? money.minus(than) + " more" : than.minus(money) + " less";
    }

    /** "1 machine fewer on target, EUR 20.00 less": what other figures lose or gain. */
    static String change(Figures other, Figures plan) {
        String cost = difference(other.cost(), plan.cost());
        long weight = other.weight() - plan.weight();
        if (weight == 0) {
            return cost;
        }
        return "%d %s on target by weight (%d machines instead of %d), %s".formatted(
                Math.abs(weight), weight < 0 ? "fewer" : "more", other.onTarget(), plan.onTarget(), cost);
    }
}
