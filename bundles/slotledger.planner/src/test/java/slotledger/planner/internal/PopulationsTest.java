package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import slotledger.model.board.Board;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.task.Progress;
import slotledger.model.trade.Target;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Weight;
import slotledger.planner.PlanRequest;
import slotledger.planner.Targets;
import slotledger.planner.internal.choice.Considered;
import slotledger.planner.internal.choice.FleetClasses;
import slotledger.planner.internal.choice.FleetOptions;
import slotledger.planner.internal.choice.MachineClass;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** What the rules allow and the target asks for, the planner considers, and nothing else. */
class PopulationsTest {

    /** The documented limit of the search. */
    private static final int MOST_NEW_KINDS = 2;
    private static final int MACHINES = 60;

    private final MemoryRules rules = EveryLaw.create();

    @ParameterizedTest
    @EnumSource(Worlds.class)
    void theSearchFindsExactlyWhatTheRulesAllow(Worlds world) {
        int found = 0;
        int machines = world.isSmall() ? MACHINES : MACHINES / 5;
        for (int seed = 0; seed < machines; seed++) {
            PlanRequest request = machine(world, new Random(1000 * world.ordinal() + seed));
            List<MachineClass> classes = FleetClasses.of(request);
            Stock stock = Stock.of(request.market().offers(), request.shelf(), classes);
            Options options = new FleetOptions(rules, request.policy(), stock, classes).list(Progress.NONE).get(0);
            if (options.isOnTargetNow()) {
                continue;
            }
            List<Population> considered = Considered.of(stock, options);
            Set<Population> allowed = allowed(options.group(), stock.pieces());
            String where = world + " " + seed + ": " + options.group().now();
            assertEquals(considered.size(), new HashSet<>(considered).size(), where);
            assertEquals(allowed, new HashSet<>(considered), where);
            found += allowed.size();
        }
        System.out.printf("%s: %d populations on %d machines%n", world, found, machines);
        assertTrue(found > machines / 3, world + ": " + found);
    }

    private static PlanRequest machine(Worlds world, Random random) {
        Fixtures made = new Fixtures();
        Board board = world.board("board", random);
        made.add(board);
        int kinds = world.isSmall() ? 2 + random.nextInt(2) : 2;
        List<Piece> pieces = world.pieces(kinds, board, random);
        made.machine("M", board, "role", Worlds.population(board, pieces, random));
        made.target("role", world.amount(random), 1);
        pieces.forEach(piece -> made.offer("S", piece, 1, -1, 1, 100));
        return made.request();
    }

    private Set<Population> allowed(MachineClass group, List<Piece> pieces) {
        Set<Population> allowed = new HashSet<>();
        List<String> sockets =
                group.setup().board().sockets().stream().map(slot -> slot.label()).toList();
        fill(group, pieces, sockets, 0, group.now(), allowed);
        return allowed;
    }

    private void fill(
            MachineClass group,
            List<Piece> pieces,
            List<String> sockets,
            int next,
            Population population,
            Set<Population> allowed) {
        if (next == sockets.size()) {
            if (!population.equals(group.now()) && isWithinTheLimit(group.now(), population)
                    && isAllowed(group.setup(), population, group.target().orElseThrow())) {
                allowed.add(population);
            }
            return;
        }
        String socket = sockets.get(next);
        fill(group, pieces, sockets, next + 1, population.with(socket, SlotContent.EMPTY), allowed);
        for (Piece piece : pieces) {
            fill(group, pieces, sockets, next + 1, population.with(socket, piece), allowed);
        }
    }

    private static boolean isWithinTheLimit(Population now, Population after) {
        List<ModuleKind> coming = new ArrayList<>(after.modules());
        now.modules().forEach(coming::remove);
        return new HashSet<>(coming).size() <= MOST_NEW_KINDS;
    }

    private boolean isAllowed(Setup setup, Population after, Target target) {
        if (!after.total().atLeast(target.capacity()) || rules.weigh(setup.with(after)) == Weight.BLOCKS) {
            return false;
        }
        for (Reason reason : rules.judge(setup.with(after)).reasons()) {
            boolean isTouched = reason.slots().isEmpty() || reason.slots().stream()
                    .anyMatch(slot -> !after.in(slot).equals(setup.population().in(slot)));
            if (reason.weight() == Weight.BLOCKS || reason.weight() == Weight.UNKNOWN && isTouched) {
                return false;
            }
        }
        return Targets.meets(target, setup.with(after), rules.operate(setup.with(after)));
    }
}
