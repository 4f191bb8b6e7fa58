package slotledger.planner.internal;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import slotledger.model.board.Board;
import slotledger.model.board.Slot;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Filler;
import slotledger.model.module.Piece;
import slotledger.model.trade.Offer;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.planner.PlanRequest;
import slotledger.planner.Targets;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** Tries every population of every machine with every order. Shares no code with the search of the planner. */
final class BruteForce {

    /** Weighted machines on target, minor units for all, moves. */
    record Best(long weight, long cost, long moves) {
        boolean isBeatenBy(long otherWeight, long otherCost, long otherMoves) {
            if (otherWeight != weight) {
                return otherWeight > weight;
            }
            return otherCost != cost ? otherCost < cost : otherMoves < moves;
        }
    }

    private record Way(int[] in, int[] out, int moves, boolean onTarget, Population after) {
    }

    private final PlanRequest request;
    private final MemoryRules rules;
    private final List<Piece> kinds = new ArrayList<>();
    private final List<List<Way>> ways = new ArrayList<>();
    private final Map<Piece, Boolean> uses = new HashMap<>();
    private final List<Population> ends = new ArrayList<>();
    private final BruteForceChoices rooms;
    private BruteForceShop shop;
    private int mixed = Integer.MAX_VALUE;
    private Best best = new Best(-1, Long.MAX_VALUE, Long.MAX_VALUE);

    BruteForce(PlanRequest request, MemoryRules rules) {
        this.request = request;
        this.rules = rules;
        rooms = new BruteForceChoices(request);
        Set<Piece> all = new HashSet<>();
        request.market().offers().forEach(offer -> all.add(offer.piece()));
        all.addAll(request.shelf().pieces().keySet());
        request.fleet().machines().forEach(machine -> all.addAll(machine.population().pieces()));
        kinds.addAll(all);
    }

    Best solve() {
        for (Machine machine : request.fleet().machines()) {
            List<Way> own = new ArrayList<>();
            fill(machine, machine.population(), 0, own);
            ways.add(own);
        }
        rooms.find(this::isOnTarget);
        for (int i = 0; i < ways.size(); i++) {
            Machine machine = request.fleet().machines().get(i);
            ways.get(i).removeIf(way -> !rooms.mayEnd(machine, way.after(), isOnTarget(machine, machine.population())));
        }
        rooms.share(machine -> ways.get(request.fleet().machines().indexOf(machine)).stream()
                .map(Way::after).toList());
        for (int i = 0; i < ways.size(); i++) {
            Machine machine = request.fleet().machines().get(i);
            ways.get(i).removeIf(way -> !rooms.mayEndAlone(machine, way.after()));
        }
        List<Offer> offers = request.market().offers();
        boolean[] mayOrder = new boolean[offers.size()];
        for (int i = 0; i < mayOrder.length; i++) {
            mayOrder[i] = mayOrder(offers.get(i));
        }
        shop = new BruteForceShop(request, kinds, mayOrder);
        walk(0, new int[kinds.size()], new int[kinds.size()], 0, 0, 0);
        return best;
    }

    private void fill(Machine machine, Population population, int socket, List<Way> own) {
        List<Slot> sockets = request.fleet().boardOf(machine).sockets();
        if (socket == sockets.size()) {
            if (isAllowed(machine, population)) {
                own.add(way(machine, population));
            }
            return;
        }
        String label = sockets.get(socket).label();
        fill(machine, population.with(label, SlotContent.EMPTY), socket + 1, own);
        for (Piece kind : kinds) {
            fill(machine, population.with(label, kind), socket + 1, own);
        }
    }

    private boolean isAllowed(Machine machine, Population after) {
        if (after.equals(machine.population())) {
            return true;
        }
        boolean onTargetNow = isOnTarget(machine, machine.population());
        if (rooms.pinned(machine).isPresent()) {
            return rooms.pinned(machine).get().equals(after)
                    && !rules.judge(Setup.of(request.fleet(), machine).with(after)).blocks();
        }
        if (request.policy().leaveAlone().covers(machine) || !isOnTarget(machine, after)
                || onTargetNow && !rooms.isNamed(machine)
                        && !(request.policy().harvest() && request.policy().reusePulled())) {
            return false;
        }
        if ((!onTargetNow || rooms.isNamed(machine)) && channels(machine, after) < channels(machine,
                machine.population())) {
            return false;
        }
        Verdict verdict = rules.judge(Setup.of(request.fleet(), machine).with(after));
        for (Reason reason : verdict.reasons()) {
            boolean touched = reason.slots().isEmpty() || reason.slots().stream()
                    .anyMatch(slot -> !after.in(slot).equals(machine.population().in(slot)));
            if (reason.weight() == Weight.BLOCKS || reason.weight() == Weight.UNKNOWN && touched) {
                return false;
            }
        }
        return true;
    }

    private int channels(Machine machine, Population population) {
        return rules.operate(Setup.of(request.fleet(), machine).with(population)).mode().channels();
    }

    private boolean isOnTarget(Machine machine, Population population) {
        Setup setup = Setup.of(request.fleet(), machine).with(population);
        return request.policy().target(machine.role())
                .filter(target -> Targets.meets(target, setup, rules.operate(setup))).isPresent();
    }

    private Way way(Machine machine, Population after) {
        int[] in = new int[kinds.size()];
        int[] out = new int[kinds.size()];
        after.contents().forEach((slot, content) -> {
            if (!content.equals(machine.population().in(slot))) {
                content.piece().ifPresent(kind -> in[kinds.indexOf(kind)]++);
                machine.population().in(slot).piece().ifPresent(kind -> out[kinds.indexOf(kind)]++);
            }
        });
        int moves = 0;
        for (int kind = 0; kind < in.length; kind++) {
            moves += Math.max(in[kind], out[kind]);
            int within = Math.min(in[kind], out[kind]);
            in[kind] -= within;
            out[kind] -= within;
        }
        return new Way(in, out, moves, isOnTarget(machine, after), after);
    }

    private void walk(int machine, int[] in, int[] out, long weight, long labour, long moves) {
        if (machine == ways.size()) {
            List<Integer> needs = new ArrayList<>();
            for (int kind = 0; kind < in.length; kind++) {
                int own = request.shelf().count(kinds.get(kind)) + (request.policy().reusePulled() ? out[kind] : 0);
                needs.add(Math.max(0, in[kind] - own));
            }
            long order = shop.cheapest(needs);
            int mixedNow = rooms.mixed(ends);
            boolean isBetter = mixedNow != mixed ? mixedNow < mixed : best.isBeatenBy(weight, labour + order, moves);
            if (order != Long.MAX_VALUE && mixedNow != BruteForceChoices.NEVER && isBetter) {
                best = new Best(weight, labour + order, moves);
                mixed = mixedNow;
            }
            return;
        }
        Machine which = request.fleet().machines().get(machine);
        for (Way way : ways.get(machine)) {
            add(in, way.in(), 1);
            add(out, way.out(), 1);
            long work = way.moves() == 0 ? 0 : request.policy().perMachine().minor()
                    + way.moves() * request.policy().perModule().minor();
            long counts = way.onTarget() ? request.policy().target(which.role()).orElseThrow().weight() : 0;
            ends.add(way.after());
            walk(machine + 1, in, out, weight + counts, labour + work, moves + way.moves());
            ends.remove(ends.size() - 1);
            add(in, way.in(), -1);
            add(out, way.out(), -1);
        }
    }

    private static void add(int[] sum, int[] more, int sign) {
        for (int i = 0; i < sum.length; i++) {
            sum[i] += sign * more[i];
        }
    }

    /** Whether some machine that may be opened takes the kind with no other beside it; others are never bought. */
    private boolean isOfUse(Piece kind) {
        boolean isPinned = request.fleet().machines().stream().anyMatch(machine ->
                rooms.pinned(machine).filter(after -> after.pieces().contains(kind)).isPresent());
        return isPinned || uses.computeIfAbsent(kind, each -> request.fleet().machines().stream()
                .filter(this::mayBeOpened)
                .anyMatch(machine -> isOfUse(machine, each)));
    }

    private boolean isOfUse(Machine machine, Piece kind) {
        Board board = request.fleet().boardOf(machine);
        Optional<Filler> blank = board.fill().blank();
        if (kind instanceof Filler) {
            return blank.filter(kind::equals).isPresent();
        }
        int sockets = board.sockets().size();
        for (int filled = 1; filled < 1 << sockets; filled++) {
            Population alone = Population.empty(board);
            for (int socket = 0; socket < sockets; socket++) {
                String label = board.sockets().get(socket).label();
                boolean isFilled = (filled >> socket & 1) == 1;
                alone = isFilled ? alone.with(label, kind)
                        : blank.isPresent() ? alone.with(label, blank.get()) : alone;
            }
            if (rules.weigh(Setup.of(request.fleet(), machine).with(alone)).compareTo(Weight.UNKNOWN) < 0) {
                return true;
            }
        }
        return false;
    }

    private boolean mayBeOpened(Machine machine) {
        boolean harvest = request.policy().harvest() && request.policy().reusePulled();
        return request.policy().target(machine.role()).isPresent()
                && (harvest || rooms.isNamed(machine) || !isOnTarget(machine, machine.population()));
    }

    private boolean mayOrder(Offer offer) {
        return request.choices().forbids(offer).isEmpty() && isUsable(offer) && isOfUse(offer.piece());
    }

    /** Whether it holds on the day, or its price is kept, and can arrive in time as far as anybody knows. */
    private boolean isUsable(Offer offer) {
        boolean holds = request.policy().buying().keepPrices()
                || offer.validUntil().isEmpty() || !offer.validUntil().get().isBefore(request.date());
        boolean late = request.policy().buying().neededBy().isPresent() && offer.leadDays().isPresent()
                && request.date().plusDays(offer.leadDays().getAsInt())
                        .isAfter(request.policy().buying().neededBy().get());
        return holds && !late;
    }
}
