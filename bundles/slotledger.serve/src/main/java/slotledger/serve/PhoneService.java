package slotledger.serve;

/** Serves the rounds of projects to phones. */
public interface PhoneService {

    /**
     * Starts a server, which runs until it is closed.
     *
     * @throws ServeException where it can't start, for one because the port is taken or there is no round yet; the
     *                        message says what to do
     */
    PhoneServer start(ServeRequest request) throws ServeException;
}
