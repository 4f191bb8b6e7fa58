package slotledger.serve;

import java.net.URI;
import java.nio.file.Path;
import java.util.List;

/** A server that runs. */
public interface PhoneServer extends AutoCloseable {

    /** What a technician opens; without a secret it shows nothing but two fields. */
    URI address();

    /** A pass for each round, in the order of the rounds; only those that were made at this start know their secret. */
    List<Pass> passes();

    /**
     * Writes the passes that were made at this start as a page to print, one sheet a round. Whoever reads the file can
     * enter: only its owner may, where the file system knows owners.
     *
     * @throws ServeException where the file is there already, or can't be written
     */
    void writePasses(Path file) throws ServeException;

    /** Stops; what was answered is written down, and what was not is sent again by the phones. */
    @Override
    void close();
}
