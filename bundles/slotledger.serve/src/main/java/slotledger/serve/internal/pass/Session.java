package slotledger.serve.internal.pass;

import java.time.Instant;
import slotledger.model.work.Round;

/**
 * A browser that has entered.
 *
 * @param hash       of its token
 * @param round      id of the only round it sees
 * @param plan       the plan the round belongs to
 * @param technician whose round it was then
 * @param expires    with the pass it entered by
 */
public record Session(String hash, String round, int plan, String technician, Instant expires) {

    /** Whether it may see a round: the same one, of the same plan, and still the same technician's. */
    public boolean maySee(Round each) {
        return each.id().equals(round) && each.plan() == plan && each.technician().equals(technician);
    }
}
