package slotledger.workbench.internal.fleet;

import java.util.List;
import java.util.Objects;
import java.util.Optional;
import slotledger.model.machine.Machine;
import slotledger.model.plan.Outcome;
import slotledger.model.trade.Target;
import slotledger.workbench.internal.Texts;

/**
 * How a machine stands, told by a symbol and a word.
 *
 * @param symbol one sign, understood without colour
 * @param word   for people
 */
public record FleetState(String symbol, String word) implements Comparable<FleetState> {

    public FleetState {
        Objects.requireNonNull(symbol, "symbol");
        Objects.requireNonNull(word, "word");
    }

    /** A machine whose board nobody knows, or whose modules can't be in it. */
    static FleetState unresolved() {
        return new FleetState("?", Texts.state_unresolved);
    }

    /** Before a plan; measured as the plan measures it. */
    static FleetState now(Machine machine, Optional<Target> target, List<String> lacks) {
        if (target.isEmpty()) {
            return new FleetState("–", Texts.state_no_target);
        }
        if (machine.population().hasUnread()) {
            return new FleetState("?", Texts.state_unread);
        }
        return lacks.isEmpty()
                ? new FleetState("✓", Texts.state_on_target)
                : new FleetState("▼", Texts.state_below);
    }

    static FleetState planned(Outcome outcome) {
        String symbol = switch (outcome) {
            case ON_TARGET, REACHES_TARGET -> "✓";
            case IMPROVED -> "▲";
            case NOT_HELPED -> "✗";
            case DONOR -> "◇";
            case LEFT_ALONE, NO_TARGET -> "–";
        };
        return new FleetState(symbol, outcome.text());
    }

    @Override
    public int compareTo(FleetState other) {
        return word.compareTo(other.word);
    }

    @Override
    public String toString() {
        return symbol + " " + word;
    }
}
