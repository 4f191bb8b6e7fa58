package slotledger.serve;

import java.net.URI;
import java.time.Instant;
import java.util.List;
import java.util.Objects;
import java.util.Optional;

/**
 * What lets a technician see one round.
 *
 * @param round      its id
 * @param technician may be empty
 * @param machines   how many the round has
 * @param expires    when the secret stops to hold
 * @param entry      the secret; empty where it was made at an earlier start, since it is shown only once
 */
public record Pass(String round, String technician, int machines, Instant expires, Optional<Entry> entry) {

    public Pass {
        Objects.requireNonNull(round, "round");
        Objects.requireNonNull(technician, "technician");
        Objects.requireNonNull(expires, "expires");
        Objects.requireNonNull(entry, "entry");
    }

    /**
     * A secret that was just made.
     *
     * @param secret as it is typed
     * @param link   opens the round; the secret is in its fragment, which no server and no log sees
     * @param code   the link as a QR code: rows of dark (true) and light, with the light ground around it
     */
    public record Entry(String secret, URI link, List<List<Boolean>> code) {
        public Entry {
            Objects.requireNonNull(secret, "secret");
            Objects.requireNonNull(link, "link");
            code = code.stream().map(List::copyOf).toList();
        }

        /** Says nothing of the secret. */
        @Override
        public String toString() {
            return "entry";
        }
    }
}
