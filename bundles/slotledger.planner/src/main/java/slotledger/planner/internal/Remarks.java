package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import slotledger.model.finding.Finding;
import slotledger.model.finding.Severity;
import slotledger.model.machine.AssetTag;
import slotledger.model.machine.Machine;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.plan.Move;
import slotledger.model.plan.Purchase;
import slotledger.model.plan.Station;
import slotledger.model.source.Place;
import slotledger.model.trade.Offer;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.planner.internal.choice.Fit;
import slotledger.planner.internal.choice.JudgedBoard;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.work.Expansion;

/** What a reader of a plan must know beside the plan itself. */
final class Remarks {

    private Remarks() {
    }

    static List<Finding> of(
            List<JudgedBoard> boards,
            Stock stock,
            List<Options> options,
            Expansion expansion,
            List<Purchase> purchases) {
        List<Finding> remarks = new ArrayList<>();
        stock.offers().stream()
                .filter(offer -> !fits(offer.piece(), boards))
                .forEach(offer -> remarks.add(noBoard(offer)));
        options.stream().filter(each -> each.board().weigh(each.group().now()) == Weight.BLOCKS)
                .forEach(each -> each.group().machines().forEach(machine -> remarks.add(contradiction(each, machine))));
        purchases.stream().filter(line -> line.over() >= line.offer().packSize())
                .forEach(line -> remarks.add(filledUp(line)));
        expansion.rings().forEach((tag, donors) -> remarks.add(ring(tag, donors)));
        return remarks;
    }

    /** A better solver can't be used here. */
    static Finding ofSolver(String used, String why) {
        return new Finding(
                Severity.NOTE,
                "solver-not-usable",
                Place.NOWHERE,
                Optional.empty(),
                "",
                "The plan was made with %s. %s".formatted(used, why),
                "",
                "Nothing, where the plan is proven. On a large fleet use a machine on which the other solver runs.");
    }

    private static boolean fits(Piece kind, List<JudgedBoard> boards) {
        return boards.stream().anyMatch(board -> board.fit(kind) != Fit.BLOCKED);
    }

    private static Finding noBoard(Offer offer) {
        return new Finding(
                Severity.NOTE,
                "offer-fits-no-board",
                offer.place(),
                Optional.empty(),
                "",
                "No board of the fleet takes what %s offers (%s).".formatted(offer.id(), offer.piece()),
                "",
                "Leave the offer out, or check how its module is described.");
    }

    private static Finding filledUp(Purchase line) {
        return new Finding(
                Severity.NOTE,
                "order-filled-up",
                line.offer().place(),
                Optional.empty(),
                "",
                "%d of the %d modules bought by %s are more than the machines and spares need."
                        .formatted(line.over(), line.modules(), line.offer().id()),
                "",
                "Nothing: with them the whole order costs less (price by quantity, free delivery), or is large enough"
                        + " for the supplier.");
    }

    private static Finding contradiction(Options options, Machine machine) {
        Reason reason = options.board().judge(options.group().now()).reasons(Weight.BLOCKS).get(0);
        return new Finding(
                Severity.WARNING,
                "present-population-not-allowed",
                machine.place(),
                Optional.of(machine.tag()),
                "",
                "The inventory of %s does not agree with its board %s: %s"
                        .formatted(machine.tag(), options.group().setup().board().name(), reason.sentence()),
                "",
                "Look into the machine and correct the inventory or the board file; the plan takes the inventory as it"
                        + " is.");
    }

    private static Finding ring(AssetTag tag, List<Move> late) {
        List<String> donors = late.stream()
                .map(move -> ((Station.InSlot) move.from()).machine().value()).distinct().toList();
        Map<SlotContent, Integer> kinds = new LinkedHashMap<>();
        late.forEach(move -> kinds.merge(move.content(), 1, Integer::sum));
        String set = kinds.entrySet().stream().map(kind -> kind.getValue() + " x " + kind.getKey())
                .collect(Collectors.joining(" and "));
        String names = String.join(", ", donors);
        return new Finding(
                Severity.WARNING,
                "swap-ring",
                Place.NOWHERE,
                Optional.of(tag),
                "",
                "Machines swap modules in a ring: %s gets %s out of %s, which can't be done before it."
                        .formatted(tag, set, names),
                "",
                ("Open %s first and take its old modules out. Leave it open until %s %s done, or put a borrowed set"
                        + " (%s) into it until then, and give that back.")
                        .formatted(tag, names, donors.size() == 1 ? "is" : "are", set));
    }
}
