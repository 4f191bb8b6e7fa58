package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.task.Progress;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Policy;
import slotledger.model.unit.Money;
import slotledger.planner.PlanRequest;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.FleetClasses;
import slotledger.planner.internal.choice.FleetOptions;
import slotledger.planner.internal.choice.JudgedBoard;
import slotledger.planner.internal.choice.MachineClass;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.choice.UsableOffers;
import slotledger.rules.MemoryRules;

/**
 * What a search begins with: all that can be done with each class of machines, and all that can be had. Listing asks
 * the rules and takes the most time; questions about other money or other offers ask the search again, not the rules.
 *
 * @param request what the fleet is planned from
 * @param usable  offers that can be used, and why others can't
 * @param stock   what can be had
 * @param boards  every board asked, with its processors
 * @param options of each class
 */
public record Listed(
        PlanRequest request, UsableOffers usable, Stock stock, List<JudgedBoard> boards, List<Options> options) {

    public Listed {
        Objects.requireNonNull(request, "request");
        Objects.requireNonNull(usable, "usable");
        Objects.requireNonNull(stock, "stock");
        boards = List.copyOf(boards);
        options = List.copyOf(options);
    }

    /** The same, asked with other money or other choices that list nothing else. */
    Listed with(Policy policy, Choices choices) {
        return with(request.with(policy).with(choices), stock, options);
    }

    /** Lists everything. */
    static Listed of(PlanRequest request, MemoryRules rules, Progress progress) throws PlannerException {
        Currencies.check(request.policy());
        progress.step("grouping machines into classes", 0);
        PinCheck.check(request, rules);
        UsableOffers usable = UsableOffers.of(request);
        List<MachineClass> classes = FleetClasses.of(request);
        Stock stock = Stock.of(usable.offers(), request.shelf(), classes);
        PinCheck.check(request, stock);
        FleetOptions fleet = new FleetOptions(rules, request.policy(), request.choices(), stock, classes);
        List<Options> options = fleet.list(progress);
        return new Listed(request, usable, stock, fleet.boards(), options);
    }

    /** The same with another budget for goods and delivery; empty for no limit. */
    public Listed withBudget(Optional<Money> budget) {
        return with(request.with(request.policy().withBudget(budget)), stock, options);
    }

    /** The same where an offer can't be bought. What the rules allow stays as it is. */
    public Listed withoutOffer(String offer) {
        return with(request, stock.withoutOffer(offer), options);
    }

    /** The same where a machine must end with one of its candidates. */
    public Listed pinned(AssetTag machine, Candidate candidate) {
        List<Options> changed = new ArrayList<>();
        for (Options each : options) {
            Optional<Machine> found =
                    each.group().machines().stream().filter(other -> other.tag().equals(machine)).findFirst();
            if (found.isEmpty()) {
                changed.add(each);
                continue;
            }
            List<Machine> others = new ArrayList<>(each.group().machines());
            others.remove(found.get());
            if (!others.isEmpty()) {
                changed.add(each.of(others, each.candidates()));
            }
            changed.add(each.of(List.of(found.get()), List.of(candidate)));
        }
        return with(request, stock, changed);
    }

    /** The same for other classes. */
    public Listed with(List<Options> changed) {
        return with(request, stock, changed);
    }

    private Listed with(PlanRequest asked, Stock had, List<Options> changed) {
        return new Listed(asked, usable, had, boards, changed);
    }
}
