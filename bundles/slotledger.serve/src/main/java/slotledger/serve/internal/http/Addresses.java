package slotledger.serve.internal.http;

import java.net.Inet6Address;
import java.net.InetAddress;
import java.net.InetSocketAddress;
import java.net.SocketAddress;
import java.util.HexFormat;
import org.eclipse.jetty.server.Request;

/** What one side is known by. */
final class Addresses {

    private static final int NETWORK_BYTES = 8;

    private Addresses() {
    }

    static String key(Request request) {
        return key(request.getConnectionMetaData().getRemoteSocketAddress());
    }

    /** An address; of IPv6 its network, since one computer has as many addresses there as it likes (RFC 4291). */
    static String key(SocketAddress remote) {
        if (!(remote instanceof InetSocketAddress socket) || socket.getAddress() == null) {
            return "unknown";
        }
        InetAddress address = socket.getAddress();
        return address instanceof Inet6Address && !address.isLoopbackAddress()
                ? HexFormat.of().formatHex(address.getAddress(), 0, NETWORK_BYTES) : address.getHostAddress();
    }
}
