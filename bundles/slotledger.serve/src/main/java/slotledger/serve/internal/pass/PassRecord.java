package slotledger.serve.internal.pass;

import java.time.Instant;

/**
 * What is kept of a pass.
 *
 * @param round      id of the round
 * @param plan       the plan the round belongs to
 * @param technician who walked it when the pass was made
 * @param salt       of the hash
 * @param hash       of the secret
 * @param expires    when it stops to hold
 */
record PassRecord(String round, int plan, String technician, String salt, String hash, Instant expires) {

    boolean holdsAt(Instant now) {
        return now.isBefore(expires);
    }
}
