package slotledger.serve.internal.http;

import java.net.InetAddress;
import java.net.NetworkInterface;
import java.net.SocketException;
import java.net.UnknownHostException;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import slotledger.serve.ServeException;

/**
 * Where a server listens, and how it is called.
 *
 * @param address to listen at
 * @param name    as it stands in links
 * @param names   all that browsers may call it
 */
record Place(InetAddress address, String name, Set<String> names) {

    private static final int HTTP = 80;
    private static final int HTTPS = 443;

    /** This computer alone, unless its name or address in a network is given. */
    static Place of(Optional<String> network) throws ServeException {
        if (network.isEmpty()) {
            return new Place(InetAddress.getLoopbackAddress(), "localhost",
                    new LinkedHashSet<>(List.of("localhost", "127.0.0.1", "[::1]")));
        }
        String given = network.get().strip().toLowerCase(Locale.ROOT);
        try {
            InetAddress address = InetAddress.getByName(given);
            if (given.isEmpty() || address.isAnyLocalAddress()
                    || NetworkInterface.getByInetAddress(address) == null) {
                throw new ServeException("\"" + network.get() + "\" is not an address of this computer. It has: "
                        + String.join(", ", own()) + ".");
            }
            String literal = literal(address);
            boolean isLiteral = given.equals(literal) || literal.equals("[" + given + "]");
            String name = isLiteral ? literal : given;
            return new Place(address, name, new LinkedHashSet<>(List.of(name, literal)));
        } catch (UnknownHostException | SocketException problem) {
            throw new ServeException("\"" + network.get() + "\" is no address that is known here. This computer has: "
                    + String.join(", ", own()) + ".", problem);
        }
    }

    /** Host and port as browsers send them, with the port left out where the scheme implies it. */
    Set<String> authorities(boolean encrypted, int port) {
        Set<String> all = new LinkedHashSet<>();
        for (String each : names) {
            all.add(each + ":" + port);
            if (port == (encrypted ? HTTPS : HTTP)) {
                all.add(each);
            }
        }
        return all;
    }

    private static String literal(InetAddress address) {
        String text = address.getHostAddress();
        int zone = text.indexOf('%');
        String plain = zone < 0 ? text : text.substring(0, zone);
        return plain.contains(":") ? "[" + plain + "]" : plain;
    }

    private static List<String> own() {
        List<String> all = new ArrayList<>();
        try {
            NetworkInterface.networkInterfaces().flatMap(NetworkInterface::inetAddresses)
                    .filter(address -> !address.isLoopbackAddress() && !address.isLinkLocalAddress())
                    .forEach(address -> all.add(address.getHostAddress()));
        } catch (SocketException problem) {
            return List.of("addresses that can't be listed");
        }
        return all.isEmpty() ? List.of("no address in a network") : all;
    }
}
