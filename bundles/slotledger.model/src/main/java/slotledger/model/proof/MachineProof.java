package slotledger.model.proof;

import java.util.List;
import java.util.Objects;
import slotledger.model.plan.MachinePlan;

/**
 * One machine's end compared with its plan.
 *
 * @param plan        what was planned
 * @param outcome     how it ended
 * @param differences what differs, slot by slot or in the total
 * @param remark      one sentence for people
 */
public record MachineProof(MachinePlan plan, ProofOutcome outcome, List<Difference> differences, String remark) {

    public MachineProof {
        Objects.requireNonNull(plan, "plan");
        Objects.requireNonNull(outcome, "outcome");
        differences = List.copyOf(differences);
        Objects.requireNonNull(remark, "remark");
    }

    /**
     * One thing that differs.
     *
     * @param where   slot label, or "total"
     * @param planned what was planned
     * @param found   what was found
     */
    public record Difference(String where, String planned, String found) {
        public Difference {
            Objects.requireNonNull(where, "where");
            Objects.requireNonNull(planned, "planned");
            Objects.requireNonNull(found, "found");
        }
    }
}
