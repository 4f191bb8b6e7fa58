package slotledger.planner.internal.why;

import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Collectors;
import slotledger.model.module.Piece;
import slotledger.model.plan.Obstacle;
import slotledger.model.trade.Policy;
import slotledger.model.unit.Money;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;

/** Why a machine that could be helped isn't: stock or money does not reach, given everything else in the plan. */
public final class SupplyObstacles {

    private final Stock stock;
    private final Policy policy;
    private final WhatIsLeft left;

    public SupplyObstacles(Stock stock, Policy policy, WhatIsLeft left) {
        this.stock = stock;
        this.policy = policy;
        this.left = left;
    }

    Obstacle of(Options options) {
        List<Candidate> candidates = options.candidates().stream().filter(Candidate::opens).toList();
        Optional<Money> cheapest = candidates.stream()
                .map(candidate -> left.price(candidate.used()))
                .flatMap(Optional::stream)
                .min(Comparator.naturalOrder());
        return cheapest.map(price -> budget(options, price)).orElseGet(() -> stock(candidates));
    }

    /** Whether these modules are left over or still for sale. */
    boolean canBeHad(List<Piece> modules) {
        Map<Integer, Integer> used = new TreeMap<>();
        modules.forEach(kind -> used.merge(stock.number(kind), 1, Integer::sum));
        return left.lacks(used).isEmpty();
    }

    private Obstacle budget(Options options, Money price) {
        Optional<Money> rest = policy.budget().map(budget -> budget.minus(left.againstBudget(policy.buying().tax())));
        if (rest.isPresent() && price.compareTo(rest.get()) > 0) {
            return new Obstacle(
                    Obstacle.Kind.BUDGET,
                    ("The modules for it cost %s with delivery; %s of the budget of %s are left after all other"
                            + " machines.").formatted(price, rest.get(), policy.budget().get()),
                    "%s more budget.".formatted(price.minus(rest.get())),
                    List.of());
        }
        String centre = options.group().costCentre();
        if (!centre.isEmpty()) {
            Money budget = policy.costCentreBudgets().get(centre);
            Money free = budget.minus(left.goodsOf(centre));
            return new Obstacle(
                    Obstacle.Kind.BUDGET,
                    ("The modules for it cost %s; %s of the budget of %s of cost centre %s are left after all other"
                            + " machines.").formatted(price, free, budget, centre),
                    "A larger budget for cost centre %s.".formatted(centre),
                    List.of());
        }
        return new Obstacle(
                Obstacle.Kind.BUDGET,
                "Stock and money reach for the other machines only; the modules for it cost %s.".formatted(price),
                "A larger budget or more stock.",
                List.of());
    }

    private Obstacle stock(List<Candidate> candidates) {
        SortedMap<Integer, Integer> lacking = candidates.stream()
                .map(candidate -> left.lacks(candidate.used()))
                .min(Comparator.comparingInt(each -> each.values().stream().mapToInt(Integer::intValue).sum()))
                .orElseGet(TreeMap::new);
        String text = lacking.entrySet().stream()
                .map(lack -> "%d x %s".formatted(lack.getValue(), stock.pieces().get(lack.getKey())))
                .collect(Collectors.joining(" and "));
        return new Obstacle(
                Obstacle.Kind.STOCK,
                "The modules that would fit are sold out or needed by other machines; missing: %s.".formatted(text),
                "%s more, offered or owned.".formatted(text),
                List.of());
    }
}
