package slotledger.planner.internal.why;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.TreeMap;
import java.util.stream.Collectors;
import slotledger.model.module.Piece;
import slotledger.model.plan.Obstacle;
import slotledger.model.trade.Policy;
import slotledger.model.unit.Money;
import slotledger.planner.PlannerException;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.model.Limit;

/** Why a machine that could be helped isn't: stock or money does not reach, given everything else in the plan. */
public final class SupplyObstacles {

    private final Stock stock;
    private final Policy policy;
    private final OptionalInt mostOpened;
    private final WhatIsLeft left;
    private final Freeing freeing;

    /** With at most so many machines opened, where somebody decided that. */
    public SupplyObstacles(
            Stock stock, Policy policy, OptionalInt mostOpened, WhatIsLeft left, Freeing freeing) {
        this.mostOpened = mostOpened;
        this.stock = stock;
        this.policy = policy;
        this.left = left;
        this.freeing = freeing;
    }

    Obstacle of(Options options) throws PlannerException {
        Optional<Freeing.Change> money = freeing.money(options);
        return money.isPresent() ? budget(money.get(), "it to its target as well")
                : stock(freeing.pieces(options).orElseThrow(
                        () -> new IllegalStateException("Enough modules must bring a machine on target.")));
    }

    /** Why a room that could be brought on target as a whole isn't. */
    Obstacle of(UniformRoom room) throws PlannerException {
        Optional<Freeing.Change> money = freeing.money(room);
        return money.isPresent() ? budget(money.get(), ("it to its target, and all %d machines of its board in its"
                        + " room, which is kept uniform, with it,").formatted(room.size()))
                : stock(freeing.pieces(room).orElseThrow(
                        () -> new IllegalStateException("Enough modules must bring a room on target.")));
    }

    /** The room of a class in a uniform room, where its machines can have something in common. */
    Optional<UniformRoom> room(Options options) {
        return freeing.room(options);
    }

    /** Whether these modules are left over or still for sale. */
    boolean canBeHad(List<Piece> modules) {
        Map<Integer, Integer> used = new TreeMap<>();
        modules.forEach(kind -> used.merge(stock.number(kind), 1, Integer::sum));
        return left.lacks(used).isEmpty();
    }

    private Obstacle budget(Freeing.Change change, String whom) {
        Money now = left.againstBudget(policy.buying().tax());
        Money more = money(Math.max(0, money(change.order()).minus(now).minor()));
        List<String> binds = new ArrayList<>();
        List<String> needs = new ArrayList<>();
        change.excess().forEach((limit, excess) -> {
            binds.add(binds(limit));
            needs.add(needs(limit, money(excess)));
        });
        boolean isMoney = !binds.isEmpty();
        long over = over(change);
        if (over > 0) {
            binds.add("at most %d machines may be opened".formatted(mostOpened.getAsInt()));
            needs.add(leave(over));
        }
        if (binds.isEmpty()) {
            return new Obstacle(
                    Obstacle.Kind.BUDGET,
                    "Money and stock would reach for it too, for %s more; the search ended before it was found."
                            .formatted(more),
                    "Plan again with this plan to begin with.",
                    List.of());
        }
        return new Obstacle(
                isMoney ? Obstacle.Kind.BUDGET : Obstacle.Kind.POLICY,
                "To bring %s would cost %s more for goods and delivery; %s."
                        .formatted(whom, more, String.join(", and ", binds)),
                "%s.".formatted(capital(String.join(" and ", needs))),
                List.of());
    }

    /** By how many machines more are opened than may be. */
    private long over(Freeing.Change change) {
        return mostOpened.isPresent() ? change.opened() - mostOpened.getAsInt() : 0;
    }

    private static String leave(long over) {
        return "leave to open %d more %s".formatted(over, over == 1 ? "machine" : "machines");
    }

    private static String capital(String text) {
        return Character.toUpperCase(text.charAt(0)) + text.substring(1);
    }

    private String binds(Limit limit) {
        if (limit.of() == Limit.Of.BUDGET) {
            Money budget = policy.budget().orElseThrow();
            return "%s of the budget of %s are left after all other machines".formatted(
                    budget.minus(left.againstBudget(policy.buying().tax())), budget);
        }
        Money budget = policy.costCentreBudgets().get(limit.name());
        return "%s of the budget of %s of cost centre %s are left after all other machines"
                .formatted(budget.minus(left.goodsOf(limit.name())), budget, limit.name());
    }

    private static String needs(Limit limit, Money money) {
        return limit.of() == Limit.Of.BUDGET ? "%s more budget".formatted(money)
                : "%s more budget for cost centre %s".formatted(money, limit.name());
    }

    private Money money(long minor) {
        return new Money(minor, policy.currency());
    }

    private Obstacle stock(Freeing.Change change) {
        String text = change.excess().entrySet().stream()
                .map(lack -> "%d x %s".formatted(
                        lack.getValue(), stock.pieces().get(Integer.parseInt(lack.getKey().name()))))
                .collect(Collectors.joining(" and "));
        String also = over(change) > 0 ? " Also " + leave(over(change)) + "." : "";
        return new Obstacle(
                Obstacle.Kind.STOCK,
                "The modules that would fit are sold out or needed by other machines; missing: %s.".formatted(text),
                "%s more, owned, or offered at a price that the budget reaches for.%s".formatted(text, also),
                List.of());
    }
}
