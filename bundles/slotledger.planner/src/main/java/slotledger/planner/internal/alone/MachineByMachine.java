package slotledger.planner.internal.alone;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.machine.Machine;
import slotledger.model.plan.BoughtAlone;
import slotledger.model.trade.Policy;
import slotledger.model.unit.Money;
import slotledger.planner.PlanRequest;
import slotledger.planner.internal.choice.MachineClass;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.model.PlanModel;

/**
 * What a careful person with a spreadsheet would get. In inventory order each machine below its target gets the
 * upgrade that costs least by itself, at the prices of a single purchase, out of the populations the plan could choose
 * from; own modules come first, stock and the money of cost centres are kept. Then the sum is ordered with its spares
 * at true price steps, by turns without each supplier. Where that costs more than the budget, the last machines are
 * left out. Modules pulled out of one machine are not used in another.
 */
public final class MachineByMachine {

    private final PlanRequest request;
    private final Policy policy;
    private final Stock stock;
    private final List<Options> options;
    private final Counter counter;
    private final Money none;

    private MachineByMachine(PlanRequest request, Stock stock, List<Options> options) {
        this.request = request;
        this.policy = request.policy();
        this.stock = stock;
        this.options = options;
        this.none = Money.zero(policy.currency());
        this.counter = new Counter(stock, request.market().suppliers(), none);
    }

    /** Buys. */
    public static BoughtAlone of(PlanRequest request, Stock stock, List<Options> options) {
        MachineByMachine all = new MachineByMachine(request, stock, options);
        List<Errand.Upgrade> upgrades = all.upgrades();
        return all.result(upgrades.subList(0, all.affordable(upgrades)));
    }

    private List<Errand.Upgrade> upgrades() {
        Map<Machine, Errand> errands = new IdentityHashMap<>(request.fleet().machines().size());
        Shop shop = new Shop(stock, counter, policy);
        for (Options each : options) {
            if (each.canBeHelped()) {
                Errand errand = new Errand(each, shop);
                each.group().machines().forEach(machine -> errands.put(machine, errand));
            }
        }
        List<Errand.Upgrade> upgrades = new ArrayList<>();
        int most = request.choices().mostOpened().orElse(Integer.MAX_VALUE);
        for (Machine machine : request.fleet().machines()) {
            Errand errand = upgrades.size() < most ? errands.get(machine) : null;
            if (errand != null) {
                errand.next().ifPresent(upgrades::add);
            }
        }
        return upgrades;
    }

    /** The largest number of upgrades found by halving whose order fits the budget; it is the first ones that count. */
    private int affordable(List<Errand.Upgrade> upgrades) {
        if (bill(upgrades).isPresent()) {
            return upgrades.size();
        }
        int fits = 0;
        int tooMany = upgrades.size();
        while (tooMany - fits > 1) {
            int middle = (fits + tooMany) >>> 1;
            if (bill(upgrades.subList(0, middle)).isPresent()) {
                fits = middle;
            } else {
                tooMany = middle;
            }
        }
        return fits;
    }

    private Optional<Bill> bill(List<Errand.Upgrade> upgrades) {
        long[] modules = new long[stock.pieces().size()];
        upgrades.forEach(each -> each.candidate().used().visit((kind, count) -> modules[kind] += count));
        for (int kind = 0; kind < modules.length; kind++) {
            long bought = Math.max(0, modules[kind] - stock.shelf().count(stock.pieces().get(kind)));
            modules[kind] = bought + policy.spares(Math.toIntExact(bought));
        }
        return counter.order(modules)
                .filter(bill -> policy.budget().isEmpty() || bill.payable().compareTo(policy.budget().get()) <= 0);
    }

    private BoughtAlone result(List<Errand.Upgrade> upgrades) {
        Bill bill = bill(upgrades).orElseThrow(() -> new IllegalStateException("It must be possible to buy nothing."));
        long labour = 0;
        long weight = 0;
        for (Errand.Upgrade upgrade : upgrades) {
            labour += PlanModel.labour(policy, upgrade.candidate());
            weight += upgrade.weight();
        }
        long onTarget = upgrades.size();
        for (Options each : options) {
            if (each.isOnTargetNow()) {
                MachineClass group = each.group();
                onTarget += group.leaveAlone() ? 0 : group.size();
                weight += group.weight() * group.size();
            }
        }
        return new BoughtAlone(onTarget, weight, upgrades.size(), bill.goods(), bill.delivery(),
                new Money(labour, none.currency()));
    }
}
