package slotledger.app.internal;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import slotledger.app.Survey;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.module.Piece;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;
import slotledger.model.trade.Market;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Shelf;
import slotledger.model.trade.Wave;

/** What a wave of work begins with. */
final class Waves {

    private Waves() {
    }

    static Survey survey(Survey survey, Wave wave, Optional<Plan> before) {
        return survey.at(
                survey.project().at(wave.name(), wave.date()),
                before.map(plan -> after(survey.fleet(), plan)).orElse(survey.fleet()),
                before.map(plan -> left(survey.market(), plan)).orElse(survey.market()),
                before.map(Waves::shelf).orElse(survey.shelf()),
                survey.policy().orElseThrow().of(wave));
    }

    /** All machines with what the plan puts into them. */
    private static Fleet after(Fleet fleet, Plan plan) {
        List<Machine> machines = plan.machines().stream().map(Waves::after).toList();
        return new Fleet(machines, fleet.boards());
    }

    private static Machine after(MachinePlan plan) {
        Machine machine = plan.machine();
        return new Machine(machine.tag(), machine.serial(), machine.where(), machine.costCentre(), machine.role(),
                machine.board(), machine.processors(), machine.processor(), machine.operatingSystem(),
                machine.redundancy(), plan.after(), machine.place());
    }

    /** A supplier's stock counts once for all waves: nobody knows whether it is filled up. */
    private static Market left(Market market, Plan plan) {
        Map<String, Integer> bought = new HashMap<>();
        plan.purchases().forEach(line -> bought.merge(line.offer().id(), line.packs(), Integer::sum));
        List<Offer> offers = market.offers().stream()
                .map(offer -> offer.stock().isEmpty() ? offer : offer.withStock(OptionalInt.of(
                        Math.max(0, offer.stock().getAsInt() - bought.getOrDefault(offer.id(), 0)))))
                .toList();
        return new Market(offers, market.suppliers());
    }

    private static Shelf shelf(Plan plan) {
        Map<Piece, Integer> pieces = new LinkedHashMap<>();
        plan.leftovers().stream().filter(leftover -> leftover.to() instanceof Station.OnShelf)
                .forEach(leftover -> leftover.content().piece()
                        .ifPresent(piece -> pieces.merge(piece, leftover.count(), Integer::sum)));
        return new Shelf(pieces);
    }
}
