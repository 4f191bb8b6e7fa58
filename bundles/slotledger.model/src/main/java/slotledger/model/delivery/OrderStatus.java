package slotledger.model.delivery;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.model.delivery.TradeState.Happened;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.source.Place;

/**
 * How far the order of a plan has come.
 *
 * @param number    of the plan
 * @param plan      the plan as it was kept
 * @param approval  who answers for it; empty where nobody does yet
 * @param suppliers by name, in the plan's order
 * @param lines     every order line, in the plan's order
 * @param drawn     what was used beside the plan
 * @param ended     whether nothing more will come
 */
public record OrderStatus(
        int number,
        Plan plan,
        Optional<Happened> approval,
        List<AtSupplier> suppliers,
        List<Line> lines,
        List<TradeEvent.Drawn> drawn,
        boolean ended) {

    public OrderStatus {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(approval, "approval");
        suppliers = List.copyOf(suppliers);
        lines = List.copyOf(lines);
        drawn = List.copyOf(drawn);
    }

    /**
     * The part of the order one supplier has.
     *
     * @param sent      when it went out; empty where it has not
     * @param confirmed what the supplier said last
     */
    public record AtSupplier(String supplier, Optional<LocalDate> sent, Optional<TradeEvent.Confirmed> confirmed) {
        public AtSupplier {
            Objects.requireNonNull(supplier, "supplier");
            Objects.requireNonNull(sent, "sent");
            Objects.requireNonNull(confirmed, "confirmed");
        }
    }

    /**
     * One order line; all counts are modules.
     *
     * @param purchase what was ordered
     * @param good     that arrived as ordered
     * @param wrong    that arrived and are not what was ordered
     * @param dead     that arrived dead
     * @param untested good ones whose test nobody noted
     * @param drawn    good ones that were used beside the plan
     */
    public record Line(Purchase purchase, int good, int wrong, int dead, int untested, int drawn) {
        public Line {
            Objects.requireNonNull(purchase, "purchase");
        }

        /** Still wanted: not there, or there and of no use. */
        public int missing() {
            return Math.max(0, purchase.modules() - good);
        }
    }

    public static OrderStatus of(int number, Plan plan, TradeState trade) {
        Map<String, LocalDate> sent = new LinkedHashMap<>();
        Map<String, TradeEvent.Confirmed> confirmed = new LinkedHashMap<>();
        List<TradeEvent.Drawn> drawn = new ArrayList<>();
        for (Happened each : trade.of(number)) {
            if (each.event() instanceof TradeEvent.Sent went) {
                sent.put(went.supplier(), went.day());
            } else if (each.event() instanceof TradeEvent.Confirmed said) {
                confirmed.put(said.supplier(), said);
            } else if (each.event() instanceof TradeEvent.Drawn taken) {
                drawn.add(taken);
            }
        }
        List<AtSupplier> suppliers = plan.purchases().stream().map(line -> line.offer().supplier()).distinct()
                .map(name -> new AtSupplier(name, Optional.ofNullable(sent.get(name)),
                        Optional.ofNullable(confirmed.get(name)))).toList();
        List<Line> lines = plan.purchases().stream().map(line -> line(line, trade.of(number))).toList();
        return new OrderStatus(number, plan, trade.approval(number), suppliers, lines, drawn, trade.isEnded(number));
    }

    private static Line line(Purchase purchase, List<Happened> happened) {
        int good = 0;
        int wrong = 0;
        int dead = 0;
        int untested = 0;
        int drawn = 0;
        for (Happened each : happened) {
            if (each.event() instanceof TradeEvent.Received came && came.offer().equals(purchase.offer().id())) {
                good += came.good();
                wrong += came.wrong();
                dead += came.dead();
                untested += came.tested() ? 0 : came.good();
            } else if (each.event() instanceof TradeEvent.Drawn taken && taken.offer().equals(purchase.offer().id())) {
                drawn += taken.modules();
            }
        }
        return new Line(purchase, good, wrong, dead, untested, drawn);
    }

    /** What arrived, for whoever shares it out: what was drawn can't be used any more. */
    public List<Receipt> receipts() {
        return lines.stream().filter(line -> line.good() + line.wrong() + line.dead() > 0)
                .map(line -> new Receipt(line.purchase().offer().supplier(), line.purchase().offer().id(),
                        OptionalInt.empty(), OptionalInt.of(line.good() + line.wrong() + line.dead()),
                        line.wrong() + line.dead() + line.drawn(), Place.NOWHERE)).toList();
    }
}
