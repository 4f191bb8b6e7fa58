package slotledger.serve.internal.http;

import java.util.LinkedHashMap;
import java.util.Map;
import org.eclipse.jetty.http.HttpFields;

/** Headers of every answer, those of refusals among them. */
final class SafeHeaders {

    /**
     * Only files of this server; nothing written into a page runs; nobody frames it. A form never goes anywhere by
     * itself: should the script not run, the secret must not end in an address.
     */
    private static final String POLICY = "default-src 'none'; script-src 'self'; style-src 'self'; img-src 'self'; "
            + "connect-src 'self'; manifest-src 'self'; worker-src 'self'; base-uri 'none'; form-action 'none'; "
            + "frame-ancestors 'none'";

    private static final Map<String, String> ALL = new LinkedHashMap<>();

    static {
        ALL.put("Content-Security-Policy", POLICY);
        ALL.put("X-Content-Type-Options", "nosniff");
        ALL.put("X-Frame-Options", "DENY");
        ALL.put("Referrer-Policy", "no-referrer");
        ALL.put("Cross-Origin-Opener-Policy", "same-origin");
        ALL.put("Cross-Origin-Resource-Policy", "same-origin");
        ALL.put("Permissions-Policy", "camera=(self), microphone=(), geolocation=()");
    }

    private SafeHeaders() {
    }

    static void add(HttpFields.Mutable headers) {
        ALL.forEach(headers::put);
    }
}
