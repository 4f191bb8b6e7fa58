package slotledger.model.proof;

import java.util.List;
import java.util.Objects;
import slotledger.model.machine.AssetTag;

/**
 * The proof of a plan with what it means for its jobs.
 *
 * @param proof      how every machine ended
 * @param deviations what is other than planned, in plan order
 * @param closed     machines whose jobs end with this proof, because all agrees
 * @param serials    slots whose serial number is the one that was read at the work
 */
public record ClosingProof(Proof proof, List<Deviation> deviations, List<AssetTag> closed, int serials) {

    public ClosingProof {
        Objects.requireNonNull(proof, "proof");
        deviations = List.copyOf(deviations);
        closed = List.copyOf(closed);
    }

    /** Whether every machine that was to be opened ended as planned, and nothing else is other than planned. */
    public boolean isClean() {
        return proof.isComplete() && deviations.isEmpty();
    }
}
