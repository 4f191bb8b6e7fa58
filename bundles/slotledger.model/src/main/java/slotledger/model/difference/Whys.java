package slotledger.model.difference;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import slotledger.model.machine.Machine;
import slotledger.model.plan.MachinePlan;
import slotledger.model.plan.Move;
import slotledger.model.plan.Obstacle;
import slotledger.model.plan.Plan;
import slotledger.model.plan.Station;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Target;

/**
 * Says why two plans treat a machine differently: first what is different about the machine itself, then what was
 * decided for it, then what binds, last where its modules come from.
 */
final class Whys {

    private final Plan before;
    private final Plan after;
    private final Map<String, LineChange> lines = new LinkedHashMap<>();

    Whys(Plan before, Plan after, List<LineChange> lines) {
        this.before = before;
        this.after = after;
        lines.forEach(line -> this.lines.put(line.offer().id(), line));
    }

    String why(Optional<MachinePlan> then, Optional<MachinePlan> now) {
        if (then.isEmpty()) {
            return "The machine was not in the earlier plan.";
        }
        if (now.isEmpty()) {
            return "The machine is not planned any more.";
        }
        return itself(then.get(), now.get())
                .or(() -> decided(then.get().machine(), then.get(), now.get().machine()))
                .or(() -> bound(then.get(), now.get()))
                .or(() -> supplied(then.get(), now.get()))
                .orElse("Nothing about the machine itself has changed: the plan is the best for the whole fleet, and"
                        + " its best has moved.");
    }

    private static Optional<String> itself(MachinePlan then, MachinePlan now) {
        if (!then.before().equals(now.before())) {
            return Optional.of("The machine held %s when the earlier plan was made, and holds %s now.".formatted(
                    DifferenceText.population(then.before(), now.before()),
                    DifferenceText.population(now.before(), then.before())));
        }
        if (!then.machine().board().equals(now.machine().board())) {
            return Optional.of("Its board is another one: %s, not %s."
                    .formatted(now.machine().board(), then.machine().board()));
        }
        Optional<Target> target = now.target();
        return then.target().equals(target) ? Optional.empty()
                : Optional.of("Its target is another one: %s, not %s."
                        .formatted(text(target), text(then.target())));
    }

    private static String text(Optional<Target> target) {
        return target.map(each -> each.capacity() + " (role " + each.role() + ", weight " + each.weight() + ")")
                .orElse("none");
    }

    private Optional<String> decided(Machine was, MachinePlan then, Machine is) {
        boolean alone = before.policy().leaveAlone().covers(was);
        if (alone != after.policy().leaveAlone().covers(is)) {
            return Optional.of(alone ? "The policy left it alone, and does not any more."
                    : "The policy leaves it alone now.");
        }
        Choices decided = before.choices();
        Choices decides = after.choices();
        Optional<Pin> pin = decides.pin(is.tag());
        if (!decided.pin(was.tag()).map(Pin::slots).equals(pin.map(Pin::slots))) {
            return Optional.of(pin.map(known -> "It is pinned now: " + known + ".")
                    .orElse("It was pinned, and is not any more."));
        }
        Optional<String> room = decides.uniformRoom(is);
        if (!decided.uniformRoom(was).equals(room)) {
            return Optional.of(room.isPresent() ? "Its room is to be uniform now."
                    : "Its room was to be uniform, and need not be any more.");
        }
        return then.moves().stream().filter(Whys::comesIn).map(Move::content)
                .filter(content -> content.piece().filter(decides::forbids).isPresent())
                .findFirst().map(content -> "What it was to get is forbidden now: " + content + ".");
    }

    private static boolean comesIn(Move move) {
        return !(move.from() instanceof Station.InSlot) && move.to() instanceof Station.InSlot;
    }

    private static Optional<String> bound(MachinePlan then, MachinePlan now) {
        Optional<Obstacle> obstacle = now.obstacle();
        if (then.obstacle().isEmpty() && obstacle.isPresent()) {
            return obstacle.map(Obstacle::message);
        }
        if (then.obstacle().isPresent() && obstacle.isEmpty()) {
            return then.obstacle().map(was -> "What kept it from its target does not any more. It was: "
                    + was.message());
        }
        return Optional.empty();
    }

    private Optional<String> supplied(MachinePlan then, MachinePlan now) {
        for (Move move : then.moves()) {
            if (move.from() instanceof Station.FromOrder order && lines.containsKey(order.offer())) {
                LineChange line = lines.get(order.offer());
                Optional<String> forbidden = after.choices().forbids(line.offer()).map(taste ->
                        "Its modules were ordered of %s (part %s), and somebody decided \"%s\"."
                                .formatted(line.offer().supplier(), line.offer().part(), taste));
                return forbidden.or(() -> Optional.of(DifferenceText.source("Its modules were ordered of", line)));
            }
        }
        for (Move move : now.moves()) {
            if (move.from() instanceof Station.FromOrder order && lines.containsKey(order.offer())) {
                return Optional.of(DifferenceText.source("Its modules are ordered of", lines.get(order.offer())));
            }
        }
        return Optional.empty();
    }
}
