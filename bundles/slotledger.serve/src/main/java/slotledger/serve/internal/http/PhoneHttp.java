package slotledger.serve.internal.http;

import java.io.IOException;
import java.net.BindException;
import java.net.URI;
import java.security.KeyStore;
import java.util.Optional;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.http.HttpVersion;
import org.eclipse.jetty.server.ConnectionFactory;
import org.eclipse.jetty.server.ConnectionLimit;
import org.eclipse.jetty.server.HttpConfiguration;
import org.eclipse.jetty.server.HttpConnectionFactory;
import org.eclipse.jetty.server.SecureRequestCustomizer;
import org.eclipse.jetty.server.Server;
import org.eclipse.jetty.server.ServerConnector;
import org.eclipse.jetty.server.SslConnectionFactory;
import org.eclipse.jetty.util.ssl.SslContextFactory;
import org.eclipse.jetty.util.thread.QueuedThreadPool;
import slotledger.serve.ServeException;
import slotledger.serve.ServeRequest;
import slotledger.serve.internal.page.Shell;
import slotledger.serve.internal.pass.PassBook;
import slotledger.serve.internal.round.RoundDesk;

/** The server itself: listens, and ends what is too slow or too much. */
public final class PhoneHttp implements AutoCloseable {

    private static final Logger LOG = Logger.getLogger(PhoneHttp.class.getName());
    private static final int THREADS = 40;
    private static final int IDLE_THREADS = 4;
    private static final int HEADER_BYTES = 8 * 1024;
    private static final int BACKLOG = 50;

    private final Server server;
    private final ScheduledExecutorService watcher = Executors.newSingleThreadScheduledExecutor(task -> {
        Thread thread = new Thread(task, "slotledger phones watch");
        thread.setDaemon(true);
        return thread;
    });
    private final URI address;

    private PhoneHttp(Server server, URI address) {
        this.server = server;
        this.address = address;
    }

    /** Listens until it is closed. */
    public static PhoneHttp start(ServeRequest request, RoundDesk desk, PassBook passes, Limits limits)
            throws ServeException {
        Place place = Place.of(request.network());
        Optional<KeyStore> keys = Optional.empty();
        if (request.certificate().isPresent()) {
            keys = Optional.of(Certificates.read(request.certificate().get()));
        }
        boolean encrypted = keys.isPresent();
        QueuedThreadPool threads = new QueuedThreadPool(THREADS, IDLE_THREADS);
        threads.setName("slotledger phones");
        threads.setDaemon(true);
        Server server = new Server(threads);
        server.setErrorHandler(new PlainErrors());
        ServerConnector connector = new ServerConnector(server, null, null, null, 1, 1, factories(request, keys));
        connector.setHost(place.address().getHostAddress());
        connector.setPort(request.port());
        connector.setIdleTimeout(limits.idle().toMillis());
        connector.setAcceptQueueSize(BACKLOG);
        ConnectionWatch watch = new ConnectionWatch(limits, System::nanoTime);
        connector.addBean(watch);
        connector.addBean(new ConnectionLimit(limits.allConnections(), connector));
        server.addConnector(connector);
        int port = open(connector, request.port());
        Cookies cookies = new Cookies(encrypted);
        server.setHandler(new PhoneHandler(
                new Gate(encrypted ? "https" : "http", place.authorities(encrypted, port)),
                new Calls(desk, passes, limits, cookies, System::nanoTime), cookies, new Shell(), limits));
        PhoneHttp http = new PhoneHttp(server,
                URI.create((encrypted ? "https://" : "http://") + place.name() + ":" + port + "/"));
        http.run(watch, limits);
        return http;
    }

    /** What a browser opens. */
    public URI address() {
        return address;
    }

    @Override
    public void close() {
        watcher.shutdownNow();
        stop(server);
    }

    private void run(ConnectionWatch watch, Limits limits) throws ServeException {
        try {
            server.start();
        } catch (Exception problem) {
            close();
            throw new ServeException("The server can't start: " + problem.getMessage(), problem);
        }
        long pause = Math.max(1, limits.wholeRequest().toMillis() / 4);
        watcher.scheduleWithFixedDelay(watch::look, pause, pause, TimeUnit.MILLISECONDS);
    }

    private static ConnectionFactory[] factories(ServeRequest request, Optional<KeyStore> keys) {
        HttpConfiguration configuration = new HttpConfiguration();
        configuration.setSendServerVersion(false);
        configuration.setSendXPoweredBy(false);
        configuration.setRequestHeaderSize(HEADER_BYTES);
        configuration.setResponseHeaderSize(HEADER_BYTES);
        HttpConnectionFactory http = new HttpConnectionFactory(configuration);
        if (keys.isEmpty()) {
            return new ConnectionFactory[] {http};
        }
        // Which names lead here is looked at for every request, encrypted or not.
        configuration.addCustomizer(new SecureRequestCustomizer(false));
        SslContextFactory.Server ssl = new SslContextFactory.Server();
        ssl.setKeyStore(keys.get());
        ssl.setKeyStorePassword(request.certificate().orElseThrow().password());
        ssl.setIncludeProtocols("TLSv1.2", "TLSv1.3");
        return new ConnectionFactory[] {new SslConnectionFactory(ssl, HttpVersion.HTTP_1_1.asString()), http};
    }

    private static int open(ServerConnector connector, int port) throws ServeException {
        try {
            connector.open();
            return connector.getLocalPort();
        } catch (IOException problem) {
            Throwable cause = problem.getCause() == null ? problem : problem.getCause();
            boolean taken = problem instanceof BindException || cause instanceof BindException;
            throw new ServeException("Port %d of %s can't be used: %s.".formatted(port, connector.getHost(),
                    cause.getMessage()) + (taken ? " Maybe another program has it: name another with --port." : ""),
                    problem);
        }
    }

    private static void stop(Server server) {
        try {
            server.stop();
        } catch (Exception problem) {
            LOG.log(Level.WARNING, "The server for phones did not stop cleanly: {0}", problem.getMessage());
        }
    }
}
