package slotledger.planner.internal.choice;

import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import slotledger.model.machine.Population;
import slotledger.model.module.ModuleKind;
import slotledger.model.module.Piece;
import slotledger.model.verdict.Operation;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;
import slotledger.rules.Tryouts;

/** The rules asked about one board with its processors; remembers every answer. */
public final class JudgedBoard {

    private final MemoryRules rules;
    private final Setup base;
    private final SlotOrder order;
    private final Map<Population, Weight> weights = new HashMap<>();
    private final Map<Population, Operation> operations = new HashMap<>();
    private final Map<Population, List<Reason>> unknowns = new HashMap<>();
    private final Map<ModuleKind, Fit> fits = new HashMap<>();

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

    public Weight weigh(Population population) {
        return weights.computeIfAbsent(population, each -> rules.weigh(base.with(each)));
    }

    public Operation operate(Population population) {
        return operations.computeIfAbsent(population, each -> rules.operate(base.with(each)));
    }

    public Verdict judge(Population population) {
        return rules.judge(base.with(population));
    }

    /**
     * Whether a machine may be changed so. An unknown is borne only where every slot it concerns keeps the very
     * content it has now: that the machine runs so is the evidence.
     */
    public boolean allows(Population before, Population after) {
        Weight weight = weigh(after);
        return switch (weight) {
            case PASSES, CAUTION, LOWERS -> true;
            case UNKNOWN -> doubts(before, after).isEmpty();
            case BLOCKS -> false;
        };
    }

    /** The unknowns of a population that the machine as it is now doesn't answer. */
    public List<Reason> doubts(Population before, Population after) {
        Set<String> changed = new HashSet<>();
        after.contents().forEach((slot, content) -> {
            if (!content.equals(before.in(slot))) {
                changed.add(slot);
            }
        });
        return unknowns.computeIfAbsent(after, each -> judge(each).reasons(Weight.UNKNOWN)).stream()
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
        Population empty = Population.empty(base.board());
        Set<Population> tries = new LinkedHashSet<>();
        order.patterns().forEach(slots -> tries.add(Tryouts.population(base, slots, kind)));
        order.sockets().forEach(socket -> tries.addAll(Tryouts.of(base, socket, kind)));
        Fit best = Fit.BLOCKED;
        for (Population filled : tries) {
            if (allows(empty, filled)) {
                return Fit.FITS;
            }
            if (weigh(filled) == Weight.UNKNOWN) {
                best = Fit.UNKNOWN;
            }
        }
        return best;
    }
}
