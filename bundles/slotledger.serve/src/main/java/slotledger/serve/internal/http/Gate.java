package slotledger.serve.internal.http;

import java.util.Locale;
import java.util.Set;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;

/**
 * Looks at a request before anything is done for it: whether it means this server, comes from a page of this server,
 * and is of a size and kind that are served.
 */
final class Gate {

    /** A header that a page of another site can't send along without being asked first, which is then refused. */
    static final String PAGE_TOKEN = "X-Slotledger-Page";

    private static final Set<String> OURS = Set.of("same-origin", "none");

    private final String scheme;
    private final Set<String> authorities;

    /**
     * @param scheme      http or https
     * @param authorities host and port as browsers name this server, in small letters
     */
    Gate(String scheme, Set<String> authorities) {
        this.scheme = scheme;
        this.authorities = Set.copyOf(authorities);
    }

    /** Against names of others that lead here: a page of theirs must not read what this server says. */
    void checkHost(Request request) throws RefusedException {
        String host = request.getHeaders().get(HttpHeader.HOST);
        String asked = request.getHttpURI().getAuthority();
        if (!isOurs(host) || asked != null && !isOurs(asked)) {
            throw new RefusedException(421, "This address leads here by another name than the one that is served. Open "
                    + "the address that the coordinator gave you.");
        }
    }

    /** Data is given to nobody but pages of this server. */
    void checkReading(Request request) throws RefusedException {
        String site = request.getHeaders().get("Sec-Fetch-Site");
        if (site != null && !OURS.contains(site)) {
            throw foreign();
        }
    }

    /** Nothing is changed but by pages of this server. */
    void checkChanging(Request request) throws RefusedException {
        checkReading(request);
        String origin = request.getHeaders().get(HttpHeader.ORIGIN);
        if (origin != null && !(origin.toLowerCase(Locale.ROOT).startsWith(scheme + "://")
                && isOurs(origin.substring(scheme.length() + 3)))) {
            throw foreign();
        }
        String type = request.getHeaders().get(HttpHeader.CONTENT_TYPE);
        if (type == null || !type.toLowerCase(Locale.ROOT).startsWith("application/json")) {
            throw new RefusedException(415, "What is sent here must be JSON.");
        }
        if (request.getHeaders().get(PAGE_TOKEN) == null) {
            throw foreign();
        }
    }

    private boolean isOurs(String authority) {
        return authority != null && authorities.contains(authority.toLowerCase(Locale.ROOT));
    }

    private static RefusedException foreign() {
        return new RefusedException(403, "This came from a page of another site, so it was not done.");
    }
}
