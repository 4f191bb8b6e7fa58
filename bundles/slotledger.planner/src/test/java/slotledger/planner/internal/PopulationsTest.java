package slotledger.planner.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.ForkJoinPool;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
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
import slotledger.planner.internal.choice.Candidate;
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
            assertUnbeaten(options, stock, request.policy().reusePulled(), allowed, where);
            found += allowed.size();
        }
        System.out.printf("%s: %d populations on %d machines%n", world, found, machines);
        assertTrue(found > machines / 3, world + ": " + found);
    }

    /** Of what is allowed, one of each cost that no other beats is listed. */
    private void assertUnbeaten(
            Options options, Stock stock, boolean reusePulled, Set<Population> allowed, String where) {
        Population now = options.group().now();
        Setup setup = options.group().setup();
        List<Piece> useful = reusePulled ? options.fitting().stream().map(stock.pieces()::get).toList() : List.of();
        Set<List<Integer>> costs = allowed.stream()
                .filter(after -> Targets.keepsChannels(rules.operate(setup), rules.operate(setup.with(after))))
                .map(after -> cost(now, after, stock.pieces(), useful))
                .collect(Collectors.toSet());
        Set<List<Integer>> unbeaten = costs.stream()
                .filter(cost -> costs.stream().noneMatch(other -> !other.equals(cost) && IntStream
                        .range(0, cost.size()).allMatch(i -> other.get(i) <= cost.get(i))))
                .collect(Collectors.toSet());
        List<List<Integer>> listed = options.candidates().stream().skip(1)
                .map(candidate -> cost(now, candidate.after(), stock.pieces(), useful))
                .toList();
        assertEquals(listed.size(), new HashSet<>(listed).size(), where);
        assertEquals(unbeaten, new HashSet<>(listed), where);
        assertTrue(allowed.containsAll(options.candidates().stream().skip(1).map(Candidate::after).toList()), where);
    }

    /** What comes from outside less what is of use elsewhere, by kind, and last what is handled. */
    private static List<Integer> cost(Population now, Population after, List<Piece> pieces, List<Piece> useful) {
        List<Integer> cost = new ArrayList<>();
        int handled = 0;
        for (Piece piece : pieces) {
            int in = 0;
            int out = 0;
            for (String slot : after.contents().keySet()) {
                if (!after.in(slot).equals(now.in(slot))) {
                    in += after.in(slot).piece().filter(piece::equals).isPresent() ? 1 : 0;
                    out += now.in(slot).piece().filter(piece::equals).isPresent() ? 1 : 0;
                }
            }
            handled += Math.max(in, out);
            cost.add(useful.contains(piece) ? in - out : Math.max(0, in - out));
        }
        cost.add(handled);
        return cost;
    }

    @Test
    void theListsDoNotDependOnTheNumberOfThreads() throws Exception {
        PlanRequest request = LargeFleets.of(80, 3).request();
        List<MachineClass> classes = FleetClasses.of(request);
        Stock stock = Stock.of(request.market().offers(), request.shelf(), classes);
        List<List<String>> texts = new ArrayList<>();
        for (int threads = 1; threads <= 2; threads++) {
            ForkJoinPool pool = new ForkJoinPool(threads);
            List<Options> options = pool.submit(() ->
                    new FleetOptions(rules, request.policy(), stock, classes).list(Progress.NONE)).get();
            pool.shutdown();
            texts.add(options.stream().flatMap(each -> each.candidates().stream())
                    .map(each -> each.after() + " " + each.used() + each.freed() + each.touches() + each.quality())
                    .toList());
        }
        assertTrue(texts.get(0).size() > 100, "populations: " + texts.get(0).size());
        assertEquals(texts.get(0), texts.get(1));
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
