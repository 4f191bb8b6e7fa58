package slotledger.serve.internal.http;

import com.fasterxml.jackson.databind.JsonNode;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.time.Duration;
import java.util.Map;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.http.HttpMethod;
import org.eclipse.jetty.server.Handler;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.util.Callback;
import slotledger.app.DeskException;
import slotledger.serve.internal.page.Shell;

/** Answers requests: a few fixed paths, and nothing else. */
final class PhoneHandler extends Handler.Abstract {

    private static final Logger LOG = Logger.getLogger(PhoneHandler.class.getName());
    private static final String CALLS = "/api/";

    private final Gate gate;
    private final Calls calls;
    private final Bodies bodies;
    private final Cookies cookies;
    private final Shell shell;
    private final Counter requests;

    PhoneHandler(Gate gate, Calls calls, Cookies cookies, Shell shell, Limits limits) {
        this.gate = gate;
        this.calls = calls;
        this.cookies = cookies;
        this.shell = shell;
        this.bodies = new Bodies(limits);
        this.requests = new Counter(limits.perMinute(), Duration.ofMinutes(1), System::nanoTime);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        write(request, reply(request), response, callback);
        return true;
    }

    private Reply reply(Request request) {
        try {
            return asked(request);
        } catch (RefusedException refused) {
            return Reply.problem(refused.status(), refused.getMessage());
        } catch (DeskException problem) {
            LOG.log(Level.WARNING, "A phone had to wait: {0}", problem.getMessage());
            return Reply.problem(503, "The project can't be read or written just now. Entries stay on the phone and "
                    + "are sent later; if this lasts, tell the coordinator.");
        } catch (IOException gone) {
            return Reply.problem(400, "The request did not arrive whole.");
        } catch (InterruptedException stopped) {
            Thread.currentThread().interrupt();
            return Reply.problem(503, "The server stops just now.");
        } catch (RuntimeException fault) {
            LOG.log(Level.WARNING, "A fault while answering " + request.getMethod() + " from a phone", fault);
            return Reply.problem(500, "A fault in Slotledger itself. Entries stay on the phone; tell the coordinator.");
        }
    }

    private Reply asked(Request request)
            throws RefusedException, DeskException, IOException, InterruptedException {
        gate.checkHost(request);
        String address = Addresses.key(request);
        if (!requests.take(address)) {
            throw new RefusedException(429, "Too much at once from this phone. Entries stay on it and are sent later.");
        }
        String path = request.getHttpURI().getPath();
        if (path == null || !path.startsWith(CALLS)) {
            return page(request, path == null ? "" : path);
        }
        boolean reads = path.equals("/api/round");
        HttpMethod wanted = reads ? HttpMethod.GET : HttpMethod.POST;
        if (!wanted.is(request.getMethod())) {
            throw new RefusedException(405, "This can't be asked for in this way.");
        }
        if (reads) {
            gate.checkReading(request);
            return calls.round(cookies.token(request));
        }
        gate.checkChanging(request);
        JsonNode body = bodies.read(request);
        String page = request.getHeaders().get(Gate.PAGE_TOKEN);
        return switch (path) {
            case "/api/enter" -> calls.enter(body, address);
            case "/api/events" -> calls.events(cookies.token(request), page, body);
            case "/api/leave" -> calls.leave(cookies.token(request), page);
            default -> throw new RefusedException(404, "There is nothing here.");
        };
    }

    private Reply page(Request request, String path) throws RefusedException {
        if (!HttpMethod.GET.is(request.getMethod()) && !HttpMethod.HEAD.is(request.getMethod())) {
            throw new RefusedException(405, "This can't be asked for in this way.");
        }
        Shell.File file = shell.file(path)
                .orElseThrow(() -> new RefusedException(404, "There is nothing here. Leave the path out."));
        String known = request.getHeaders().get(HttpHeader.IF_NONE_MATCH);
        Map<String, String> headers = Map.of("ETag", file.tag(), "Cache-Control", "no-cache");
        return file.tag().equals(known)
                ? new Reply(304, "", new byte[0], headers) : new Reply(200, file.type(), file.bytes(), headers);
    }

    private static void write(Request request, Reply reply, Response response, Callback callback) {
        response.setStatus(reply.status());
        SafeHeaders.add(response.getHeaders());
        if (!reply.type().isEmpty()) {
            response.getHeaders().put(HttpHeader.CONTENT_TYPE, reply.type());
        }
        response.getHeaders().put(HttpHeader.CACHE_CONTROL, "no-store");
        reply.headers().forEach(response.getHeaders()::put);
        // Of what is refused the body may still be on its way; nobody must take the connection for one to use again.
        if (reply.status() >= 400 && !HttpMethod.GET.is(request.getMethod())) {
            response.getHeaders().put(HttpHeader.CONNECTION, "close");
        }
        boolean bare = HttpMethod.HEAD.is(request.getMethod()) || reply.status() == 304;
        if (bare && reply.status() != 304) {
            response.getHeaders().put(HttpHeader.CONTENT_LENGTH, reply.body().length);
        }
        response.write(true, bare ? ByteBuffer.allocate(0) : ByteBuffer.wrap(reply.body()), callback);
    }
}
