package slotledger.planner;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.board.Slot;
import slotledger.model.machine.Fleet;
import slotledger.model.machine.Machine;
import slotledger.model.machine.Population;
import slotledger.model.machine.SlotContent;
import slotledger.model.module.Piece;
import slotledger.model.trade.Choices;
import slotledger.model.trade.Pin;
import slotledger.model.trade.Policy;
import slotledger.model.verdict.Reason;
import slotledger.model.verdict.Verdict;
import slotledger.model.verdict.Weight;
import slotledger.rules.MemoryRules;
import slotledger.rules.Setup;

/** Says whether what somebody decided for a machine may be done to it. */
public final class Pins {

    private final MemoryRules rules;
    private final Fleet fleet;
    private final Optional<Policy> policy;

    public Pins(MemoryRules rules, Fleet fleet, Optional<Policy> policy) {
        this.rules = Objects.requireNonNull(rules, "rules");
        this.fleet = Objects.requireNonNull(fleet, "fleet");
        this.policy = Objects.requireNonNull(policy, "policy");
    }

    /** Why a pin can't be kept, one sentence; empty where nothing but money and stock can stand against it. */
    public Optional<String> hindrance(Pin pin, Choices choices) {
        Optional<Machine> machine = fleet.find(pin.machine());
        if (machine.isEmpty()) {
            return Optional.of("The pinned machine %s is not in the fleet.".formatted(pin.machine()));
        }
        return fixedSlot(pin, machine.get()).or(() -> change(pin, machine.get(), choices));
    }

    private Optional<String> fixedSlot(Pin pin, Machine machine) {
        List<String> sockets = fleet.boardOf(machine).sockets().stream().map(Slot::label).toList();
        return pin.slots().keySet().stream()
                .filter(slot -> !sockets.contains(slot))
                .findFirst()
                .map(slot -> "The slot %s of the pin of %s is no socket of its board; those are %s."
                        .formatted(slot, pin.machine(), String.join(", ", sockets)));
    }

    private Optional<String> change(Pin pin, Machine machine, Choices choices) {
        Population after = pin.applied(machine.population());
        if (after.equals(machine.population())) {
            return Optional.empty();
        }
        if (policy.filter(known -> known.leaveAlone().covers(machine)).isPresent()) {
            return Optional.of("The machine %s is pinned to something else than it holds, but the policy leaves it"
                    .formatted(pin.machine()) + " alone.");
        }
        Optional<Piece> forbidden = pin.slots().values().stream()
                .map(SlotContent::piece)
                .flatMap(Optional::stream)
                .filter(choices::forbids)
                .filter(piece -> count(after, piece) > count(machine.population(), piece))
                .findFirst();
        if (forbidden.isPresent()) {
            return Optional.of("The pin of %s puts in a %s, which is forbidden.".formatted(
                    pin.machine(), forbidden.get()));
        }
        Verdict verdict = rules.judge(Setup.of(fleet, machine).with(after));
        return verdict.blocks() ? Optional.of("The pin of %s breaks a rule: %s".formatted(
                pin.machine(), sentence(verdict.reasons(Weight.BLOCKS).get(0)))) : Optional.empty();
    }

    private static long count(Population population, Piece piece) {
        return population.pieces().stream().filter(piece::equals).count();
    }

    private static String sentence(Reason reason) {
        return "%s (%s; %s)".formatted(reason.sentence(), reason.rule(), reason.source());
    }

    /** What the rules can't say of a pin that nothing stands against, one sentence; empty where they can. */
    public Optional<String> doubt(Pin pin) {
        Machine machine = fleet.find(pin.machine()).orElseThrow();
        Population after = pin.applied(machine.population());
        if (after.equals(machine.population())) {
            return Optional.empty();
        }
        return rules.judge(Setup.of(fleet, machine).with(after)).reasons(Weight.UNKNOWN).stream()
                .findFirst()
                .map(reason -> "Nobody can say whether %s runs with what it is pinned to: %s".formatted(
                        pin.machine(), sentence(reason)));
    }
}
