package slotledger.planner.internal.why;

import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.plan.Obstacle;
import slotledger.planner.PlannerException;
import slotledger.planner.Targets;
import slotledger.planner.internal.choice.MachineClass;
import slotledger.planner.internal.choice.Options;

/** Says why the machines of a class are not on target, and what would change it. */
public final class Obstacles {

    private final BoardObstacles boards;
    private final SupplyObstacles supply;
    private final Map<Options, Obstacle> known = new IdentityHashMap<>();

    public Obstacles(BoardObstacles boards, SupplyObstacles supply) {
        this.boards = Objects.requireNonNull(boards, "boards");
        this.supply = Objects.requireNonNull(supply, "supply");
    }

    /** The obstacle of a class that is below its target after the work. */
    public Obstacle of(Options options) throws PlannerException {
        Obstacle obstacle = known.get(options);
        if (obstacle == null) {
            obstacle = find(options);
            known.put(options, obstacle);
        }
        return obstacle;
    }

    private Obstacle find(Options options) throws PlannerException {
        if (options.group().leaveAlone()) {
            return new Obstacle(
                    Obstacle.Kind.POLICY,
                    "The policy leaves this machine alone; it has %s.".formatted(shortfall(options)),
                    "Take it off the list of machines to leave alone.",
                    List.of());
        }
        if (options.isPinned()) {
            return new Obstacle(
                    Obstacle.Kind.POLICY,
                    "Somebody decided what this machine holds; it has %s.".formatted(shortfall(options)),
                    "Change the pin of this machine, or take it out of the choices.",
                    List.of());
        }
        Optional<UniformRoom> room = supply.room(options);
        if (room.isPresent() && room.get().canBeHelped()) {
            return supply.of(room.get());
        }
        if (room.isPresent()) {
            return new Obstacle(
                    Obstacle.Kind.POLICY,
                    ("Its room is kept uniform, and nothing that all machines of its board there can hold brings it to"
                            + " its target; it has %s.").formatted(shortfall(options)),
                    "Take the room out of those kept uniform.",
                    List.of());
        }
        if (!options.canBeHelped()) {
            return boards.of(options);
        }
        Obstacle obstacle = supply.of(options);
        return obstacle.kind() == Obstacle.Kind.STOCK
                ? boards.missingFact(options, supply::canBeHad).orElse(obstacle) : obstacle;
    }

    /** What the machine lacks as it is now. */
    static String shortfall(Options options) {
        MachineClass group = options.group();
        return String.join(" and ", Targets.shortfalls(
                group.target().orElseThrow(), group.setup(), options.unchanged().runs()));
    }
}
