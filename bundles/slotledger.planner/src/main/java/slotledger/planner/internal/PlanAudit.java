package slotledger.planner.internal;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.TreeMap;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.plan.Leftover;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Station;
import slotledger.model.trade.Offer;
import slotledger.model.trade.PriceRule;
import slotledger.model.trade.PriceStep;
import slotledger.model.trade.Supplier;
import slotledger.model.unit.Money;
import slotledger.model.verdict.Verdict;
import slotledger.planner.PlanRequest;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/**
 * Checks a finished plan against the request in exact arithmetic, knowing nothing of how it was found. A plan that
 * fails is a programming error.
 */
final class PlanAudit {

    private final PlanRequest request;
    private final MemoryRules rules;

    PlanAudit(PlanRequest request, MemoryRules rules) {
        this.request = request;
        this.rules = rules;
    }

    void check(Plan plan) {
        plan.machines().forEach(this::checkMachine);
        checkModules(plan);
        plan.purchases().forEach(this::checkPurchase);
        checkSpares(plan);
        checkMoney(plan);
    }

    private void checkMachine(MachinePlan plan) {
        Machine machine = plan.machine();
        require(applied(plan).equals(plan.after()),
                "The moves in machine %s must lead to its population.", machine.tag());
        if (plan.isOpened()) {
            require(!request.policy().leaveAlone().covers(machine), "Machine %s must be left alone.", machine.tag());
            Verdict verdict = rules.judge(Setup.of(request.fleet(), machine).with(plan.after()));
            require(!verdict.blocks(), "The rules must allow the population of machine %s: %s",
                    machine.tag(), verdict.reasons().isEmpty() ? "" : verdict.reasons().get(0).sentence());
        }
    }

    private static Population applied(MachinePlan plan) {
        Map<String, SlotContent> slots = new LinkedHashMap<>(plan.before().contents());
        for (Move move : plan.moves()) {
            if (move.from() instanceof Station.InSlot slot && slot.machine().equals(plan.machine().tag())) {
                require(plan.before().in(slot.slot()).equals(move.content()),
                        "The slot %s of machine %s must hold what leaves it.", slot.slot(), slot.machine());
                slots.put(slot.slot(), SlotContent.EMPTY);
            }
        }
        for (Move move : plan.moves()) {
            if (move.to() instanceof Station.InSlot slot && slot.machine().equals(plan.machine().tag())) {
                require(slots.get(slot.slot()).isEmpty(),
                        "The slot %s of machine %s must be empty before something enters.",
                        slot.slot(), slot.machine());
                slots.put(slot.slot(), move.content());
            }
        }
        return new Population(slots);
    }

    /** Nothing appears, nothing vanishes: before and bought equals after and left over, for each kind. */
    private void checkModules(Plan plan) {
        Map<SlotContent, Integer> balance = new LinkedHashMap<>();
        request.shelf().pieces().forEach((piece, count) -> balance.merge(SlotContent.of(piece), count, Integer::sum));
        for (MachinePlan machine : plan.machines()) {
            machine.before().contents().values().forEach(content -> balance.merge(content, 1, Integer::sum));
            machine.after().contents().values().forEach(content -> balance.merge(content, -1, Integer::sum));
        }
        for (Purchase line : plan.purchases()) {
            balance.merge(SlotContent.of(line.offer().piece()), line.modules(), Integer::sum);
        }
        for (Leftover leftover : plan.leftovers()) {
            balance.merge(leftover.content(), -leftover.count(), Integer::sum);
        }
        balance.remove(SlotContent.EMPTY);
        balance.forEach((content, count) ->
                require(count == 0, "The modules %s must go up exactly; the difference is %d.", content, count));
    }

    /** Spares of each kind bought, in percent of the modules used, rounded up. */
    private void checkSpares(Plan plan) {
        Map<Piece, int[]> kinds = new LinkedHashMap<>();
        for (Purchase line : plan.purchases()) {
            int[] counts = kinds.computeIfAbsent(line.offer().piece(), unused -> new int[2]);
            counts[0] += line.modules() - line.spares() - line.over();
            counts[1] += line.spares();
        }
        kinds.forEach((kind, counts) -> require(
                counts[1] * 100L >= (long) counts[0] * request.policy().sparePercent(),
                "The spares (%d) of %s must be enough for %d used.", counts[1], kind, counts[0]));
    }

    private void checkPurchase(Purchase line) {
        require(line.offer().stock().isEmpty() || line.packs() <= line.offer().stock().getAsInt(),
                "The packs (%d) of %s must be in stock.", line.packs(), line.offer().id());
        require(line.total().minor() == price(line.offer(), line.packs()),
                "The price of %s must be that of the offer.", line.offer().id());
        require(request.market().offers().contains(line.offer()), "The offer %s must exist.", line.offer().id());
        require(line.offer().validUntil().filter(last -> last.isBefore(request.date())).isEmpty(),
                "The offer %s must hold.", line.offer().id());
    }

    /** The price of so many packs, one pack after the other. */
    private static long price(Offer offer, int packs) {
        long price = 0;
        for (int pack = 1; pack <= packs; pack++) {
            int counts = offer.rule() == PriceRule.ALL_PACKS ? packs : pack;
            long perPack = 0;
            for (PriceStep step : offer.steps()) {
                perPack = counts >= step.fromPacks() ? step.perPack().minor() : perPack;
            }
            price = Math.addExact(price, perPack);
        }
        return price;
    }

    private void checkMoney(Plan plan) {
        Money none = Money.zero(request.policy().currency());
        Map<String, Money> orders = new TreeMap<>();
        plan.purchases().forEach(line -> orders.merge(line.offer().supplier(), line.total(), Money::plus));
        Money payable = none;
        for (Map.Entry<String, Money> order : orders.entrySet()) {
            Supplier supplier = request.market().suppliers().get(order.getKey());
            require(supplier.minimum().filter(least -> order.getValue().compareTo(least) < 0).isEmpty(),
                    "The order (%s) from %s must reach the smallest order value.", order.getValue(), supplier.name());
            boolean isFree = supplier.freeFrom().filter(from -> order.getValue().compareTo(from) >= 0).isPresent();
            payable = payable.plus(order.getValue()).plus(isFree ? none : supplier.shipping().orElse(none));
        }
        Money labour = plan.machines().stream().map(MachinePlan::labour).reduce(none, Money::plus);
        require(payable.equals(plan.spending().payable()), "The money for suppliers must go up exactly.");
        require(labour.equals(plan.spending().labour()), "The labour must go up exactly.");
        Money byCentre = plan.spending().byCostCentre().values().stream().reduce(none, Money::plus);
        require(byCentre.equals(plan.spending().goods()), "The goods of the cost centres must add up to all goods.");
        require(request.policy().budget().filter(most -> plan.spending().payable().compareTo(most) > 0).isEmpty(),
                "The budget must hold.");
        request.policy().costCentreBudgets().forEach((centre, most) -> require(
                plan.spending().byCostCentre().getOrDefault(centre, none).compareTo(most) <= 0,
                "The budget of cost centre %s must hold.", centre));
    }

    private static void require(boolean holds, String message, Object... values) {
        if (!holds) {
            throw new IllegalStateException(message.formatted(values) + " Maybe the planner has a fault.");
        }
    }
}
