package slotledger.serve.internal;

import java.net.URI;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.Set;
import slotledger.serve.PhoneServer;
import slotledger.serve.ServeException;
import slotledger.serve.ServeRequest;
import slotledger.serve.internal.http.Limits;

/** A server over rounds in memory, that can be stopped and started again at the same address. */
final class Served implements AutoCloseable {

    final SmallWork work = new SmallWork();
    private final Path project;
    private final Limits limits;
    private final Clock clock;
    private PhoneServer server;

    Served(Path project, Limits limits, Clock clock) throws ServeException {
        this.project = project;
        this.limits = limits;
        this.clock = clock;
        this.server = start(request(project, 0));
    }

    Served(Path project) throws ServeException {
        this(project, Limits.USUAL, Clock.systemUTC());
    }

    static ServeRequest request(Path project, int port, String... renew) {
        return new ServeRequest(project, Optional.empty(), port, Optional.empty(), Duration.ofDays(7), Set.of(renew));
    }

    PhoneServer start(ServeRequest request) throws ServeException {
        return new DefaultPhoneService(work, work, limits, clock).start(request);
    }

    void stop() {
        server.close();
    }

    void startAgain(String... renew) throws ServeException {
        server = start(request(project, server.address().getPort(), renew));
    }

    PhoneServer server() {
        return server;
    }

    URI address() {
        return server.address();
    }

    /** Known only right after the start that made it. */
    String secret(String round) {
        return server.passes().stream().filter(pass -> pass.round().equals(round)).findFirst().orElseThrow()
                .entry().orElseThrow().secret();
    }

    Phone phone() {
        return new Phone(address());
    }

    Phone entered(String round) throws Exception {
        Phone phone = phone();
        if (phone.enter(round, secret(round)).statusCode() != 200) {
            throw new AssertionError("The secret of " + round + " must let a phone in.");
        }
        return phone;
    }

    @Override
    public void close() {
        server.close();
    }
}
