package slotledger.planner.internal.choice;

import java.util.Map;
import java.util.Objects;
import slotledger.model.machine.Population;
import slotledger.model.verdict.Operation;

/** A population a machine of a class could get. Its parts are made when they are asked for. */
public final class Candidate {

    private final JudgedSockets sockets;
    private final int place;
    private final Amounts used;
    private final Amounts freed;
    private final int touches;
    private final boolean onTarget;
    private final int quality;

    Candidate(
            JudgedSockets sockets,
            int place,
            Amounts used,
            Amounts freed,
            int touches,
            boolean onTarget,
            int quality) {
        this.sockets = Objects.requireNonNull(sockets, "sockets");
        this.place = place;
        this.used = Objects.requireNonNull(used, "used");
        this.freed = Objects.requireNonNull(freed, "freed");
        this.touches = touches;
        this.onTarget = onTarget;
        this.quality = quality;
    }

    /** What is in the slots then; made anew each time. */
    public Population after() {
        return sockets.population(place);
    }

    /** Modules and fillers that come from outside the machine, by number of their kind. */
    public Amounts used() {
        return used;
    }

    /** Modules and fillers that leave the machine, by number of their kind. */
    public Amounts freed() {
        return freed;
    }

    /** Modules and fillers that leave, enter or change their slot. */
    public int touches() {
        return touches;
    }

    /** Whether the target is met then; false without a target. */
    public boolean onTarget() {
        return onTarget;
    }

    /** How it runs then. */
    public Operation runs() {
        return sockets.operation(place);
    }

    /** Place among the ways the candidates of the class run, 0 for the least. */
    public int quality() {
        return quality;
    }

    Candidate withQuality(int rank) {
        return new Candidate(sockets, place, used, freed, touches, onTarget, rank);
    }

    public boolean opens() {
        return touches > 0;
    }

    /** One that stands for the decided populations of many machines: it only uses and frees. */
    public Candidate asRest(Map<Integer, Integer> allUsed, Map<Integer, Integer> allFreed) {
        return new Candidate(sockets, place, Amounts.of(allUsed), Amounts.of(allFreed), 0, false, 0);
    }
}
