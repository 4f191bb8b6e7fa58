package slotledger.planner.internal.choice;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.rules.Tryouts;

/** The rules asked about one board with its processors; remembers every answer. For one thread at a time. */
public final class JudgedBoard {

    private final MemoryRules rules;
    private final Setup base;
    private final SlotOrder order;
    private final Map<SocketCodes.Frame, JudgedSockets> sockets = new LinkedHashMap<>();
    private final Set<Set<String>> tries = new LinkedHashSet<>();
    private final Map<ModuleKind, Fit> fits = new HashMap<>();
    private final Map<Amounts, Amounts> amounts = new HashMap<>();

    public JudgedBoard(MemoryRules rules, Setup base) {
        this.rules = rules;
        this.base = base.with(Population.empty(base.board()));
        this.order = SlotOrder.of(base);
    }

    public SlotOrder order() {
        return order;
    }

    public Setup setup(Population population) {
        return base.with(population);
    }

    /** The sockets beside what the population has in the other slots. */
    JudgedSockets sockets(Population population) {
        return sockets.computeIfAbsent(SocketCodes.Frame.of(population, order.sockets()),
                frame -> new JudgedSockets(rules, base, new SocketCodes(frame)));
    }

    /** The same amounts, one object for all that are equal. */
    Amounts shared(Amounts some) {
        Amounts known = amounts.putIfAbsent(some, some);
        return known == null ? some : known;
    }

    public Weight weigh(Population population) {
        JudgedSockets judged = sockets(population);
        return judged.weight(judged.place(judged.codes().codes(population)));
    }

    public Operation operate(Population population) {
        JudgedSockets judged = sockets(population);
        return judged.operation(judged.place(judged.codes().codes(population)));
    }

    public Verdict judge(Population population) {
        return rules.judge(base.with(population));
    }

    /** The unknowns of a population that the machine as it is now doesn't answer. */
    public List<Reason> doubts(Population before, Population after) {
        Set<String> changed = new HashSet<>();
        after.contents().forEach((slot, content) -> {
            if (!content.equals(before.in(slot))) {
                changed.add(slot);
            }
        });
        return judge(after).reasons(Weight.UNKNOWN).stream()
                .filter(reason -> reason.slots().isEmpty() || reason.slots().stream().anyMatch(changed::contains))
                .toList();
    }

    /**
     * Whether the board takes modules of this kind, alone in any usual number. A filler fits where the board names it
     * for its empty sockets; where it may stand is what the rules say of each population.
     */
    public Fit fit(Piece piece) {
        if (piece instanceof ModuleKind kind) {
            return fits.computeIfAbsent(kind, this::tryOut);
        }
        return base.board().fill().blank().filter(piece::equals).isPresent() ? Fit.FITS : Fit.BLOCKED;
    }

    private Fit tryOut(ModuleKind kind) {
        if (tries.isEmpty()) {
            tries.addAll(tries(kind));
        }
        Fit best = Fit.BLOCKED;
        for (Set<String> filled : tries) {
            Population alone = Tryouts.population(base, filled, kind);
            Weight weight = rules.weigh(base.with(alone));
            if (weight.compareTo(Weight.UNKNOWN) < 0
                    || weight == Weight.UNKNOWN && doubts(base.population(), alone).isEmpty()) {
                return Fit.FITS;
            }
            best = weight == Weight.UNKNOWN ? Fit.UNKNOWN : best;
        }
        return best;
    }

    /** The sets of sockets in which a kind is tried alone; the same for every kind. */
    private Set<Set<String>> tries(ModuleKind kind) {
        Set<Set<String>> sets = new LinkedHashSet<>();
        order.patterns().forEach(pattern -> sets.add(Set.copyOf(pattern)));
        for (String socket : order.sockets()) {
            for (Population tried : Tryouts.of(base, socket, kind)) {
                sets.add(order.sockets().stream()
                        .filter(label -> tried.in(label).equals(SlotContent.of(kind)))
                        .collect(Collectors.toUnmodifiableSet()));
            }
        }
        return sets;
    }
}
