package slotledger.planner.internal.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.TreeSet;
import slotledger.model.unit.Rate;
import slotledger.model.verdict.Operation;
import slotledger.planner.Targets;

/**
 * Lists the populations of a class that the rules allow, that reach the target, and that no other one beats: it takes
 * no more of every kind, frees no less, and is no more work. Among equals the one stays that runs better, then the one
 * with fewer objections of the rules, then the one that fills the sockets in the board's order, then the one with the
 * kinds that come first in the stock.
 */
final class PopulationLister implements Fillings.Sieve {

    private static final int MOST_QUALITY = 15;

    /** Better operation last: more channels together, no remainder, higher rate. */
    private static final Comparator<Operation> BETTER = Comparator
            .comparingInt((Operation runs) -> runs.mode().channels())
            .thenComparing(runs -> runs.mode().remainder().isNone())
            .thenComparingInt(runs -> runs.rate().map(Rate::megatransfers).orElse(0));

    private final ClassSockets sockets;
    private final JudgedSockets judged;
    private final TargetCheck check;
    private final boolean giveAway;
    private final int[] now;
    private final Operation runsNow;
    private final Frontier frontier;

    /**
     * A lister.
     *
     * @param giveAway whether only populations that free a module are worth it
     * @param apart    whether populations with other contents don't beat each other
     */
    PopulationLister(ClassSockets sockets, TargetCheck check, boolean giveAway, boolean apart) {
        this.sockets = sockets;
        this.judged = sockets.judged();
        this.check = check;
        this.giveAway = giveAway;
        frontier = new Frontier(apart);
        now = sockets.now();
        runsNow = judged.operation(judged.place(now));
    }

    /**
     * The machine as it is, and then every population worth considering, little work first.
     *
     * @param least memory they hold at least, KiB
     */
    List<Candidate> list(JudgedBoard board, Coming coming, Candidate unchanged, long least) {
        Fillings.search(sockets, board.order(), coming, least, this);
        List<Frontier.Kept> kept = new ArrayList<>(frontier.kept());
        kept.sort(Comparator.comparingInt((Frontier.Kept each) -> each.cost().touches())
                .thenComparingLong(each -> sockets.kibibytesTaken(each.counts()))
                .thenComparing(Frontier.Kept::place, sockets::compareKinds));
        TreeSet<Operation> ways = new TreeSet<>(BETTER);
        ways.add(unchanged.runs());
        kept.forEach(each -> ways.add(judged.operation(each.place())));
        List<Candidate> candidates = new ArrayList<>(kept.size() + 1);
        candidates.add(unchanged.withQuality(quality(ways, unchanged.runs())));
        for (Frontier.Kept each : kept) {
            candidates.add(new Candidate(
                    judged,
                    each.place(),
                    board.shared(sockets.used(each.counts())),
                    board.shared(sockets.freed(each.counts())),
                    each.cost().touches(),
                    true,
                    quality(ways, judged.operation(each.place()))));
        }
        return candidates;
    }

    private static int quality(TreeSet<Operation> ways, Operation runs) {
        return Math.min(MOST_QUALITY, ways.headSet(runs).size());
    }

    @Override
    public boolean wants(int[] counts) {
        Frontier.Cost cost = Frontier.Cost.least(sockets, counts);
        return (!giveAway || cost.frees()) && !frontier.beats(cost);
    }

    /**
     * Of fillings with the same contents those with the least work beat the others, so that the rules are asked about
     * more work only where less isn't allowed.
     */
    @Override
    public void take(int[] counts, int... places) {
        int[] entered = new int[places.length];
        int most = -1;
        for (int i = 0; i < places.length; i++) {
            entered[i] = sockets.entered(places[i]);
            most = Math.max(most, entered[i]);
        }
        Frontier.Cost cost = Frontier.Cost.least(sockets, counts);
        int gone = sockets.gone(counts);
        int best = -1;
        for (int work = 0; work <= most && best < 0; work++) {
            cost = cost.withTouches(work + gone);
            if (frontier.beats(cost)) {
                return;
            }
            for (int i = 0; i < places.length; i++) {
                if (entered[i] == work && isGood(places[i])) {
                    best = best < 0 ? places[i] : better(best, places[i]);
                }
            }
        }
        if (best >= 0) {
            frontier.add(new Frontier.Kept(cost, counts.clone(), best), this::better);
        }
    }

    private boolean isGood(int place) {
        return judged.allows(now, place) && check.meets(place) && keepsChannels(place);
    }

    private boolean keepsChannels(int place) {
        return giveAway || Targets.keepsChannels(runsNow, judged.operation(place));
    }

    private int better(int one, int other) {
        int order = BETTER.compare(judged.operation(one), judged.operation(other));
        order = order != 0 ? order : Integer.compare(judged.objections(other), judged.objections(one));
        order = order != 0 ? order : Long.compare(distance(other), distance(one));
        order = order != 0 ? order : sockets.compareKinds(other, one);
        return order >= 0 ? one : other;
    }

    /** How far the capacities stand from the start of the board's order; less is nearer. */
    private long distance(int place) {
        long distance = 0;
        for (int socket = 0; socket < sockets.count(); socket++) {
            distance += socket * judged.codes().kibibytes(judged.code(place, socket));
        }
        return distance;
    }
}
