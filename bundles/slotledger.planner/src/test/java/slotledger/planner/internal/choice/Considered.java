package slotledger.planner.internal.choice;

import java.util.List;
import slotledger.model.machine.Population;

/** Shows what is considered for the machines of a class before anything is dropped for being beaten. */
public final class Considered {

    private Considered() {
    }

    /** The populations that the rules allow and that are on target, each once. */
    public static List<Population> of(Stock stock, Options options) {
        return Trial.of(stock, options).onTarget().toList();
    }
}
