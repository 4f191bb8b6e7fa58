package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.board.Board;
import slotledger.model.board.BoardId;
import slotledger.model.delivery.Delivery;
import slotledger.model.delivery.Settlement;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.plan.Insights;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Spending;
import slotledger.model.source.Place;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Market;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Shelf;
import slotledger.model.unit.Money;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.delivery.AllotmentAudit;
import slotledger.planner.internal.delivery.Arrival;
import slotledger.planner.internal.work.Worth;

/**
 * Ends a plan with what is there. It is planned twice: once with every machine that can be done as planned held to it,
 * once free; the first is taken unless the second brings more weighted machines on target.
 */
final class Settling {

    private final Plan plan;
    private final Arrival arrival;
    private final Map<BoardId, Board> boards;
    private final Market market;
    private final Planning planning;

    Settling(Plan plan, Arrival arrival, Map<BoardId, Board> boards, Market market, Planning planning) {
        this.plan = plan;
        this.arrival = arrival;
        this.boards = boards;
        this.market = market;
        this.planning = planning;
    }

    Settlement settle(Progress progress) throws PlannerException {
        Delivery delivery = arrival.allot(planning.solver(), progress);
        Set<AssetTag> done = new LinkedHashSet<>(delivery.done());
        Set<AssetTag> ready = delivery.now().work().stream().map(each -> each.machine().tag())
                .collect(Collectors.toCollection(LinkedHashSet::new));
        Plan kept = planning.plan(request(done, pins(done, ready, true)), progress);
        Plan free = planning.plan(request(done, pins(done, ready, false)), progress);
        Plan best = free.optimality().weightOnTarget() > kept.optimality().weightOnTarget() ? free : kept;
        new AllotmentAudit(arrival.there(), delivery.lines()).check(best);
        return new Settlement(delivery, plan, written(best, done, ready));
    }

    private PlanRequest request(Set<AssetTag> done, List<Pin> pins) {
        List<Machine> machines = plan.machines().stream()
                .map(each -> done.contains(each.machine().tag()) ? finished(each) : each.machine()).toList();
        Map<Piece, Integer> there = new LinkedHashMap<>(arrival.there());
        there.values().removeIf(count -> count == 0);
        Choices decided = plan.choices();
        OptionalInt most = decided.mostOpened().isEmpty() ? OptionalInt.empty()
                : OptionalInt.of(Math.max(0, decided.mostOpened().getAsInt() - done.size()));
        return new PlanRequest(plan.title(), new Fleet(machines, boards), Market.NONE, new Shelf(there),
                plan.policy().withoutBudgets(), plan.date(),
                new Choices(pins, decided.tastes(), decided.uniform(), most), Optional.of(plan));
    }

    private static Machine finished(MachinePlan plan) {
        Machine machine = plan.machine();
        return new Machine(machine.tag(), machine.serial(), machine.where(), machine.costCentre(), machine.role(),
                machine.board(), machine.processors(), machine.processor(), machine.operatingSystem(),
                machine.redundancy(), plan.after(), machine.place());
    }

    /** Nobody opens a finished machine again. A pin whose modules did not come is given up. */
    private List<Pin> pins(Set<AssetTag> done, Set<AssetTag> ready, boolean hold) {
        List<Pin> pins = new ArrayList<>();
        for (MachinePlan machine : plan.machines()) {
            AssetTag tag = machine.machine().tag();
            if (done.contains(tag)) {
                pins.add(new Pin(tag, Map.of(), Place.NOWHERE));
            } else if (hold && ready.contains(tag)) {
                pins.add(new Pin(tag, changed(machine), Place.NOWHERE));
            } else if (!machine.isOpened() || ready.contains(tag)) {
                plan.choices().pin(tag).ifPresent(pins::add);
            }
        }
        return pins;
    }

    private static Map<String, SlotContent> changed(MachinePlan machine) {
        Map<String, SlotContent> slots = new LinkedHashMap<>();
        machine.after().contents().forEach((slot, content) -> {
            if (!content.equals(machine.before().in(slot))) {
                slots.put(slot, content);
            }
        });
        return slots;
    }

    /** With the policy, the decisions and the money of the plan as it was: what is ordered is spent. */
    private Plan written(Plan best, Set<AssetTag> done, Set<AssetTag> ready) {
        Money labour = plan.machines().stream().filter(each -> done.contains(each.machine().tag()))
                .map(MachinePlan::labour).reduce(best.spending().labour(), Money::plus);
        Spending spent = plan.spending();
        List<Finding> remarks = new ArrayList<>(best.remarks());
        plan.choices().pins().stream().map(Pin::machine)
                .filter(tag -> plan.find(tag).filter(MachinePlan::isOpened).isPresent())
                .filter(tag -> !done.contains(tag) && !ready.contains(tag))
                .forEach(tag -> remarks.add(givenUp(tag)));
        return new Plan(best.title(), best.date(), plan.policy(), best.machines(), plan.purchases(),
                new Worth(market.in(plan.policy()).offers().stream()
                        .filter(offer -> offer.currency().equals(plan.policy().currency())).toList())
                        .of(best.leftovers()),
                new Spending(spent.goods(), spent.delivery(), labour, spent.byCostCentre(), spent.tax()),
                best.optimality(), remarks, plan.choices(), Insights.NONE);
    }

    private static Finding givenUp(AssetTag tag) {
        return new Finding(Severity.WARNING, "pin-given-up", Place.NOWHERE, Optional.of(tag), "",
                "The pin of %s can't be kept: what it wants did not arrive.".formatted(tag), "",
                "Nothing; or plan again with an offer that has it.");
    }
}
