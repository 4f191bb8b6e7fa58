package slotledger.serve.internal.http;

import java.time.Duration;
import java.util.Optional;
import org.eclipse.jetty.http.HttpCookie;
import org.eclipse.jetty.server.Request;

/** The cookie that holds a browser's token (RFC 6265bis: __Host- binds it to this host and to encryption). */
final class Cookies {

    private static final int LONGEST = 64;

    private final boolean encrypted;
    private final String name;

    Cookies(boolean encrypted) {
        this.encrypted = encrypted;
        this.name = encrypted ? "__Host-slotledger" : "slotledger";
    }

    String set(String token, Duration age) {
        return name + "=" + token + "; Path=/; Max-Age=" + age.toSeconds() + "; HttpOnly; SameSite=Strict"
                + (encrypted ? "; Secure" : "");
    }

    Optional<String> token(Request request) {
        return Request.getCookies(request).stream().filter(cookie -> cookie.getName().equals(name))
                .map(HttpCookie::getValue).filter(value -> !value.isEmpty() && value.length() <= LONGEST).findFirst();
    }
}
