package slotledger.cli.internal;

import slotledger.serve.PhoneServer;
import slotledger.serve.PhoneService;
import slotledger.serve.ServeException;
import slotledger.serve.ServeRequest;

/** Starts no server: remembers what it was asked, and says that there are no rounds. */
final class FakePhones implements PhoneService {

    ServeRequest asked;

    @Override
    public PhoneServer start(ServeRequest request) throws ServeException {
        asked = request;
        throw new ServeException("The project has no rounds yet.");
    }
}
