package slotledger.bench;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import slotledger.model.board.Board;
import slotledger.model.board.Redundancy;
import slotledger.model.machine.Population;
import slotledger.model.module.ModuleKind;
import slotledger.model.verdict.Arithmetic;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.standard.StandardRules;

/** Asks all rules about populations of one board: full and half full, of one kind and of two, allowed and not. */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
public class RuleBenchmark {

    private static final int POPULATIONS = 64;

    /** Sockets of the board. */
    @Param({"2", "4", "16"})
    private int sockets;

    /** Whether all populations are allowed; else as chance puts modules. */
    @Param({"true", "false"})
    private boolean allowed;

    private final MemoryRules rules = StandardRules.create();
    private slotledger.rules.Setup[] setups;
    private int next;

    /** The same populations on every run. */
    @Setup
    public void fill() {
        Board board = sockets == 2 ? RuleBoards.notebook() : sockets == 4 ? RuleBoards.desktop() : RuleBoards.server();
        List<slotledger.rules.Setup> found = new ArrayList<>();
        Random random = new Random(sockets);
        while (found.size() < POPULATIONS) {
            slotledger.rules.Setup setup = new slotledger.rules.Setup(board, board.processorSockets(),
                    Optional.of(board.processors().get(0)), Optional.of("Windows Server 2016 Standard"),
                    Redundancy.NONE, allowed ? inOrder(board, random) : anyhow(board, random));
            if (allowed && rules.weigh(setup) == Weight.BLOCKS) {
                throw new IllegalStateException(rules.judge(setup).reasons(Weight.BLOCKS).toString());
            }
            found.add(setup);
        }
        Collections.shuffle(found, random);
        setups = found.toArray(slotledger.rules.Setup[]::new);
    }

    private static Population anyhow(Board board, Random random) {
        ModuleKind[] kinds = {RuleBoards.module(board, 16, 2), RuleBoards.module(board, 32, 2)};
        Population population = Population.empty(board);
        for (var slot : board.slots()) {
            int choice = random.nextInt(3);
            population = choice == 2 ? population : population.with(slot.label(), kinds[choice]);
        }
        return population;
    }

    private static Population inOrder(Board board, Random random) {
        List<String> order = board.fill().order();
        int step = board.fill().setSize();
        int modules = step * (1 + random.nextInt(order.size() / step));
        Population population = Population.empty(board);
        ModuleKind kind = RuleBoards.module(board, 16, 2);
        for (String label : order.subList(0, modules)) {
            population = population.with(label, kind);
        }
        return population;
    }

    private slotledger.rules.Setup setup() {
        next = (next + 1) % POPULATIONS;
        return setups[next];
    }

    /** The worst weight, as the planner asks for it. */
    @Benchmark
    public Weight weigh() {
        return rules.weigh(setup());
    }

    /** How it runs. */
    @Benchmark
    public Operation operate() {
        return rules.operate(setup());
    }

    /** The verdict with every reason. */
    @Benchmark
    public Verdict judge() {
        return rules.judge(setup());
    }

    /** The arithmetic, for people. */
    @Benchmark
    public Arithmetic workOut() {
        return rules.workOut(setup());
    }
}
