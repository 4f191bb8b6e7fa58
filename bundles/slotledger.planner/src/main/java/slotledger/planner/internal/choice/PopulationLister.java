package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BinaryOperator;
import slotledger.model.machine.Population;
import slotledger.model.trade.Target;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Weight;
import slotledger.planner.Targets;

/**
 * Lists the populations of a class that the rules allow, that reach the target, and that no other one beats: it takes
 * no more of every kind, frees no less, and is no more work. Among equals the one stays that runs better, then the one
 * with fewer objections of the rules, then the one that fills the sockets in the board's order.
 */
final class PopulationLister {

    private static final int MOST_QUALITY = 15;

    /** Better operation last: more channels together, no remainder, higher rate. */
    private static final Comparator<Operation> BETTER = Comparator
            .comparingInt((Operation runs) -> runs.mode().channels())
            .thenComparing(runs -> runs.mode().remainder().isNone())
            .thenComparingInt(runs -> runs.rate().map(Rate::megatransfers).orElse(0));

    private record Kept(RawPopulation raw, Population population, Operation runs) {
    }

    private final JudgedBoard board;
    private final MachineClass group;

    /** Better last. */
    private final Comparator<Kept> preference = Comparator.comparing(Kept::runs, BETTER)
            .thenComparing(Comparator.comparingInt((Kept each) -> objections(each.population())).reversed())
            .thenComparing(Comparator.comparingLong((Kept each) -> distance(each.population())).reversed());

    PopulationLister(JudgedBoard board, MachineClass group) {
        this.board = board;
        this.group = group;
    }

    /** The machine as it is. */
    Candidate unchanged() {
        Operation runs = board.operate(group.now());
        boolean onTarget = group.target().filter(target -> meets(target, group.now())).isPresent();
        return Candidate.unchanged(group.now(), onTarget, runs);
    }

    /**
     * The machine as it is, and then every population worth considering.
     *
     * @param giveAway whether only populations that free a module are worth it
     */
    List<Candidate> list(ClassSockets sockets, Target target, boolean giveAway) {
        List<Kept> kept = new ArrayList<>();
        for (RawPopulation raw : RawPopulations.list(sockets, board.order(), target.capacity())) {
            if ((!giveAway || raw.frees()) && isWorthAsking(raw, kept)) {
                consider(raw, sockets.population(raw.codes()), target, giveAway, kept);
            }
        }
        List<Candidate> candidates = new ArrayList<>(List.of(unchanged()));
        for (Kept each : kept) {
            candidates.add(new Candidate(
                    each.population(),
                    sockets.difference(sockets.now(), each.raw().codes()),
                    sockets.difference(each.raw().codes(), sockets.now()),
                    each.raw().touches(),
                    true,
                    each.runs(),
                    0));
        }
        return ranked(candidates);
    }

    private static boolean isWorthAsking(RawPopulation raw, List<Kept> kept) {
        return kept.stream().noneMatch(
                each -> each.raw().isNoWorseThan(raw) && !each.raw().costsTheSameAs(raw));
    }

    private void consider(RawPopulation raw, Population population, Target target, boolean giveAway, List<Kept> kept) {
        if (!board.allows(group.now(), population) || !meets(target, population)
                || !giveAway && !Targets.keepsChannels(board.operate(group.now()), board.operate(population))) {
            return;
        }
        Kept fresh = new Kept(raw, population, board.operate(population));
        for (int i = 0; i < kept.size(); i++) {
            if (kept.get(i).raw().costsTheSameAs(raw)) {
                kept.set(i, BinaryOperator.maxBy(preference).apply(kept.get(i), fresh));
                return;
            }
        }
        kept.removeIf(each -> raw.isNoWorseThan(each.raw()));
        kept.add(fresh);
    }

    /** Rules that would rather have it otherwise; those that block or lack a fact were asked before. */
    private int objections(Population population) {
        Weight weight = board.weigh(population);
        return weight == Weight.PASSES ? 0 : (int) board.judge(population).reasons().stream()
                .filter(reason -> reason.weight() != Weight.PASSES)
                .count();
    }

    /** How far the capacities stand from the start of the board's order; less is nearer. */
    private long distance(Population population) {
        long sum = 0;
        List<String> sockets = board.order().sockets();
        for (int i = 0; i < sockets.size(); i++) {
            sum += i * population.in(sockets.get(i)).capacity().kibibytes();
        }
        return sum;
    }

    private boolean meets(Target target, Population population) {
        return Targets.meets(target, board.setup(population), board.operate(population));
    }

    private static List<Candidate> ranked(List<Candidate> candidates) {
        List<Operation> ways = new ArrayList<>();
        candidates.stream().map(Candidate::runs).sorted(BETTER).forEach(runs -> {
            if (ways.isEmpty() || BETTER.compare(ways.get(ways.size() - 1), runs) != 0) {
                ways.add(runs);
            }
        });
        return candidates.stream()
                .map(each -> each.withQuality(Math.min(MOST_QUALITY, rank(ways, each.runs()))))
                .toList();
    }

    private static int rank(List<Operation> ways, Operation runs) {
        int rank = 0;
        while (BETTER.compare(ways.get(rank), runs) != 0) {
            rank++;
        }
        return rank;
    }
}
