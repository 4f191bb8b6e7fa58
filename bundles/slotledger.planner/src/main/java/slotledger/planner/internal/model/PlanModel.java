package slotledger.planner.internal.model;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.IntStream;
import slotledger.model.module.Piece;
import slotledger.model.trade.Offer;
import slotledger.model.trade.Policy;
import slotledger.planner.PlanRequest;
import slotledger.planner.internal.choice.Candidate;
import slotledger.planner.internal.choice.Options;
import slotledger.planner.internal.choice.Stock;
import slotledger.planner.internal.milp.Lexicographic.Goal;
import slotledger.solver.IntegerProgramme;
import slotledger.solver.Linear;

/**
 * The whole fleet as one integer programme: how many machines of each class get which population, how many packs are
 * bought, and per kind: used &lt;= shelf + pulled + bought.
 */
public final class PlanModel {

    /** A fleet of 600 machines with price steps and delivery charges at three suppliers takes fewer than 1000. */
    private static final int NODES = 10_000;
    /** Where money is short the last machine may stay in doubt: the bound says so. */
    private static final int FIRST_NODES = 5_000;
    /** The last goal only chooses among plans of equal cost; small fleets need less. */
    private static final int LAST_NODES = 200;
    private static final int SPARES = 2;
    private static final long HUNDRED = 100;
    private static final long QUALITIES = 16;

    /** Modules of a kind that machines take: those from outside less those they free, and the first by cost centre. */
    private record Need(Linear all, SortedMap<Integer, Linear> byCentre) {
    }

    private final PlanRequest request;
    private final Policy policy;
    private final Stock stock;
    private final List<Options> options;
    private final IntegerProgramme programme = new IntegerProgramme();
    private final int[][] machines;
    private final List<OptionalLong> mostNeeded;
    private final List<Need> needs = new ArrayList<>();
    private final Purchasing purchasing;
    private final CentreShares shares;
    private final HumanChoices human;
    private final Tastes tastes;
    private final Optional<Earlier> earlier;
    private final List<Limit> limits = new ArrayList<>();

    public PlanModel(PlanRequest request, Stock stock, List<Options> options) {
        this.request = request;
        this.policy = request.policy();
        this.stock = stock;
        this.options = List.copyOf(options);
        machines = new int[options.size()][];
        for (int group = 0; group < machines.length; group++) {
            addClass(group);
        }
        List<Offer> offers = stock.offers();
        mostNeeded = mostNeeded();
        List<OptionalLong> most = offers.stream().map(offer -> mostNeeded.get(stock.number(offer.piece()))).toList();
        purchasing = new Purchasing(
                programme, offers, request.market().suppliers(), most, policy.buying().tax());
        shares = new CentreShares(
                programme, policy.costCentreBudgets(), offers, purchasing, most, policy.buying().tax());
        stock.pieces().forEach(unused -> needs.add(new Need(new Linear(), new TreeMap<>())));
        addNeeds();
        for (int kind = 0; kind < stock.pieces().size(); kind++) {
            addKind(kind);
        }
        shares.addBudgets(limits);
        tastes = new Tastes(request.choices(), offers);
        earlier = request.before().map(before -> new Earlier(programme, before, options, machines));
        human = new HumanChoices(programme, request.choices(), options, machines);
        policy.budget().ifPresent(money -> {
            limits.add(new Limit(Limit.Of.BUDGET, "", programme.rows().size(), 1));
            programme.joinAtMost("budget", purchasing.againstBudget(), money.minor());
        });
    }

    private void addClass(int group) {
        Options each = options.get(group);
        int size = each.group().size();
        int first = programme.variables(each.candidates().size(), 0, size, 0,
                population -> "machines of class %d with population %d".formatted(group, population));
        machines[group] = IntStream.range(first, first + each.candidates().size()).toArray();
        Linear all = new Linear();
        for (int variable : machines[group]) {
            all.add(variable, 1);
        }
        programme.equal("machines of class " + group, all, size);
    }

    /** Most modules of each kind that all machines together could take; empty where none takes the kind at all. */
    private List<OptionalLong> mostNeeded() {
        boolean[] fits = new boolean[stock.pieces().size()];
        long[] most = new long[fits.length];
        for (Options each : options) {
            each.fitting().forEach(kind -> fits[kind] = true);
            Map<Integer, Integer> mostUsed = new TreeMap<>();
            each.candidates().forEach(candidate ->
                    candidate.used().forEach((kind, used) -> mostUsed.merge(kind, used, Math::max)));
            mostUsed.forEach((kind, used) -> most[kind] += (long) used * each.group().size());
        }
        return IntStream.range(0, fits.length)
                .mapToObj(kind -> fits[kind]
                        ? OptionalLong.of(most[kind] + policy.spares(Math.toIntExact(most[kind])))
                        : OptionalLong.empty())
                .toList();
    }

    /** What machines take and free, of all kinds at once: a fleet has many more populations than kinds. */
    private void addNeeds() {
        forEachCandidate((group, candidate, variable) -> {
            int centre = shares.centre(options.get(group).group().costCentre());
            candidate.used().forEach((kind, used) -> {
                needs.get(kind).all().add(variable, used);
                needs.get(kind).byCentre().computeIfAbsent(centre, unused -> new Linear()).add(variable, used);
            });
            if (policy.reusePulled()) {
                candidate.freed().forEach((kind, freed) -> needs.get(kind).all().add(variable, -freed));
            }
        });
    }

    private void addKind(int kind) {
        Piece module = stock.pieces().get(kind);
        Linear bought = new Linear();
        Linear use = new Linear();
        for (int offer = 0; offer < stock.offers().size(); offer++) {
            if (stock.offers().get(offer).piece().equals(module)) {
                bought.add(purchasing.modules(offer), 1);
                use.add(shares.uses(offer), 1);
            }
        }
        limits.add(new Limit(Limit.Of.PIECES, "" + kind, programme.rows().size(), 1));
        programme.atMost("modules of kind " + kind,
                new Linear().add(needs.get(kind).all(), 1).add(use, -1), stock.shelf().count(module));
        if (!bought.isEmpty()) {
            addSpares(kind, bought, use);
            shares.addKind(module, needs.get(kind).byCentre());
        }
    }

    /** Spares as a whole number of their own: rounding up is what a search must decide early. */
    private void addSpares(int kind, Linear bought, Linear use) {
        Linear over = new Linear().add(bought, 1).add(use, -1);
        long most = mostNeeded.get(kind).orElse(0);
        if (policy.sparePercent() > 0) {
            int spares = programme.variable("spares of kind " + kind, 0, most, SPARES);
            programme.atLeast("share of spares of kind " + kind,
                    new Linear().add(spares, HUNDRED).add(use, -policy.sparePercent()), 0);
            over.add(spares, -1);
        } else if (policy.atLeastOneSpare()) {
            int spare = programme.choice("spare of kind " + kind, SPARES);
            programme.atMost("spare of kind " + kind, new Linear().add(use, 1).add(spare, -most), 0);
            over.add(spare, -1);
        }
        programme.atLeast("modules and spares of kind " + kind, over, 0);
    }

    private interface Visitor {
        void visit(int group, Candidate candidate, int variable);
    }

    private void forEachCandidate(Visitor visitor) {
        for (int group = 0; group < machines.length; group++) {
            for (int i = 0; i < machines[group].length; i++) {
                visitor.visit(group, options.get(group).candidates().get(i), machines[group][i]);
            }
        }
    }

    public IntegerProgramme programme() {
        return programme;
    }

    /** The rows that more money or more modules would ease. */
    public List<Limit> limits() {
        return List.copyOf(limits);
    }

    /** What is wanted, first things first. */
    public List<Goal> goals() {
        List<Goal> goals = new ArrayList<>(List.of(
                new Goal("bringing machines on target", missed(), FIRST_NODES, wanted()),
                new Goal("looking for the least money", cost(), NODES)));
        Linear unpreferred = tastes.unpreferred(purchasing);
        if (!unpreferred.isEmpty()) {
            goals.add(new Goal("looking for what is preferred", unpreferred, LAST_NODES));
        }
        goals.add(new Goal("looking for the least work", work(), LAST_NODES));
        earlier.ifPresent(before -> goals.add(
                new Goal("looking for what stays as planned before", before.changes(), LAST_NODES)));
        return goals;
    }

    /** Weighted machines that stay below their target though they could be brought there. */
    public Linear missed() {
        Linear missed = new Linear();
        forEachCandidate((group, candidate, variable) -> {
            if (options.get(group).canBeHelped() && !candidate.onTarget()) {
                missed.add(variable, options.get(group).group().weight());
            }
        });
        human.addMissed(missed);
        return missed;
    }

    /** Weighted machines that could be brought on target, or are there. */
    private long wanted() {
        return options.stream().filter(each -> each.canBeHelped() || each.candidates().get(0).onTarget())
                .mapToLong(each -> Math.multiplyExact((long) each.group().size(), each.group().weight())).sum();
    }

    /** Minor units that a budget counts: goods and delivery, with tax where the policy means it so. */
    public Linear againstBudget() {
        return purchasing.againstBudget();
    }

    /** Minor units for goods and delivery, tax left out. */
    public Linear payable() {
        return purchasing.payable();
    }

    private Linear cost() {
        Linear cost = purchasing.payable().add(tastes.worth(purchasing), -1);
        forEachCandidate((group, candidate, variable) -> cost.add(variable, labour(policy, candidate)));
        return cost;
    }

    /** Minor units for the work on one machine that gets this population. */
    public static long labour(Policy policy, Candidate candidate) {
        return candidate.opens()
                ? Math.addExact(policy.perMachine().minor(),
                        Math.multiplyExact(policy.perModule().minor(), (long) candidate.touches()))
                : 0;
    }

    /** Fewest touches; then fewest packs and modules bought; then the best operation. */
    private Linear work() {
        Linear second = new Linear().add(purchasing.packs(), QUALITIES).add(shares.allUses(), QUALITIES);
        forEachCandidate((group, candidate, variable) -> second.add(variable, -candidate.quality()));
        long[] spread = {1};
        second.forEach((variable, factor) -> spread[0] = Math.addExact(spread[0],
                Math.multiplyExact(Math.abs(factor), programme.high(variable))));
        Linear work = new Linear().add(second, 1);
        forEachCandidate((group, candidate, variable) ->
                work.add(variable, Math.multiplyExact(spread[0], (long) candidate.touches())));
        return work;
    }

    /** Nothing is done; keeps every row. */
    public long[] nothingDone() {
        long[] values = new long[programme.size()];
        for (int group = 0; group < machines.length; group++) {
            values[machines[group][0]] = options.get(group).group().size();
        }
        human.nothingDone(values);
        return values;
    }

    /** Reads the decisions out of the values. */
    public Choice choice(long[] values) {
        int[][] counts = new int[machines.length][];
        for (int group = 0; group < machines.length; group++) {
            counts[group] = new int[machines[group].length];
            for (int i = 0; i < counts[group].length; i++) {
                counts[group][i] = Math.toIntExact(values[machines[group][i]]);
            }
        }
        return new Choice(options, counts, purchasing.packs(values), shares.uses(values), shares.centres());
    }
}
