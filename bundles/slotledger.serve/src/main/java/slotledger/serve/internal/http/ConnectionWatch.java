package slotledger.serve.internal.http;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.LongSupplier;
import org.eclipse.jetty.io.Connection;
import org.eclipse.jetty.io.ssl.SslConnection;

/**
 * Ends connections that one address has too many of, and those that keep a request coming in so slowly that silence
 * never ends them.
 */
final class ConnectionWatch implements Connection.Listener {

    private final Limits limits;
    private final LongSupplier nanos;
    private final Map<Connection, Seen> open = new HashMap<>();
    private final Map<String, Integer> byAddress = new HashMap<>();

    ConnectionWatch(Limits limits, LongSupplier nanos) {
        this.limits = limits;
        this.nanos = nanos;
    }

    /** How many requests a connection had when that number last grew, and when. */
    private record Seen(String address, long requests, long since) {
    }

    @Override
    public void onOpened(Connection connection) {
        if (connection instanceof SslConnection) {
            return; // The one inside it counts.
        }
        String address = Addresses.key(connection.getEndPoint().getRemoteSocketAddress());
        boolean tooMany;
        synchronized (this) {
            open.put(connection, new Seen(address, 0, nanos.getAsLong()));
            tooMany = byAddress.merge(address, 1, Integer::sum) > limits.connections();
        }
        if (tooMany) {
            connection.getEndPoint().close();
        }
    }

    @Override
    public synchronized void onClosed(Connection connection) {
        Seen seen = open.remove(connection);
        if (seen != null) {
            byAddress.computeIfPresent(seen.address(), (any, count) -> count > 1 ? count - 1 : null);
        }
    }

    /** Looks for slow ones; called again and again. */
    void look() {
        slow().forEach(connection -> connection.getEndPoint().close());
    }

    private synchronized List<Connection> slow() {
        long now = nanos.getAsLong();
        open.replaceAll((connection, seen) -> connection.getMessagesIn() == seen.requests() ? seen
                : new Seen(seen.address(), connection.getMessagesIn(), now));
        return open.entrySet().stream()
                .filter(each -> now - each.getValue().since() > limits.wholeRequest().toNanos())
                .filter(each -> each.getKey().getMessagesIn() == each.getKey().getMessagesOut())
                .map(Map.Entry::getKey).toList();
    }
}
