package slotledger.serve.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.net.Socket;
import java.net.SocketException;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.serve.internal.http.Limits;

/** What somebody in the network without a pass, or with a pass and bad intent, can't do. */
class AttackTest {

    /** As usual, but slow ones end within a test's patience. */
    private static final Limits LIMITS = new Limits(10, 60, Duration.ofMinutes(15), 1_200, 24, 400, 256 * 1024, 200,
            Duration.ofMillis(700), Duration.ofMillis(1_200));

    private static final List<String> PATHS = List.of("/../passes.json", "/..%2fpasses.json",
            "/%2e%2e/%2e%2e/etc/passwd", "/phones/passes.json", "/main.js/../../passes.json", "//main.js",
            "/main.js;x", "/%00", "/./main.js", "/MAIN.JS", "/index.html", "/..\\passes.json", "/api/",
            "/api/rounds", "/api/enter/", "/round");

    private static final List<String> NAMES = List.of("evil.example", "evil.example:80", "localhost.evil.example",
            "localhost", "localhost:1", "", "localhost:@evil.example", "[::ffff:127.0.0.1]");

    @TempDir
    private Path project;

    private Served served;

    @BeforeEach
    void start() throws Exception {
        served = new Served(project, LIMITS, Clock.systemUTC());
    }

    @AfterEach
    void stop() {
        served.close();
    }

    @Test
    void noPathLeadsOutOfTheFewFilesThatAreServed() throws Exception {
        for (String path : PATHS) {
            String answer = raw("GET " + path + " HTTP/1.1\r\nHost: " + host() + "\r\nConnection: close\r\n\r\n");
            assertTrue(answer.startsWith("HTTP/1.1 4"), path + ": " + answer);
            assertSafe(answer);
        }
    }

    @Test
    void withoutASecretNothingIsListed() throws Exception {
        Phone phone = served.phone();
        for (String path : List.of("/", "/main.js", "/worker.js", "/list.js", "/app.webmanifest")) {
            HttpResponse<String> answer = phone.get(path);
            assertEquals(200, answer.statusCode());
            for (String inside : List.of("R1", "R2", "K-101", "Ada", "Lab 2")) {
                assertFalse(answer.body().contains(inside), path + " says " + inside);
            }
        }
        assertEquals(401, phone.round().statusCode());
        assertEquals(401, phone.tell(Phone.event("K-101", "ticked").put("step", 1).put("done", true)).statusCode());
        assertEquals(401, phone.post("/api/leave", "{}").statusCode());
        assertEquals(phone.enter("R1", "x").body(), phone.enter("R99", "x").body());
    }

    @Test
    void aGuessedOrCutTokenOpensNothing() throws Exception {
        String cookie = served.entered("R1").cookie();
        for (String guess : List.of("slotledger=", "slotledger=x", cookie.substring(0, cookie.length() - 1),
                cookie + "A", "slotledger=" + "A".repeat(4_000))) {
            HttpResponse<String> answer = served.phone().ask(HttpRequest.newBuilder(
                    served.address().resolve("/api/round")).header("Cookie", guess));
            assertEquals(401, answer.statusCode(), guess);
        }
    }

    @Test
    void guessingASecretEndsAfterTenTriesEvenWhereManyComeAtOnce() throws Exception {
        served.close();
        served = new Served(project.resolve("patient"));
        HttpClient client = HttpClient.newHttpClient();
        ExecutorService many = Executors.newFixedThreadPool(15);
        List<Callable<Integer>> tries = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            tries.add(() -> new Phone(client, served.address()).enter("R1", "0000-0000-0000").statusCode());
        }
        List<Integer> answers = new ArrayList<>();
        for (Future<Integer> each : many.invokeAll(tries)) {
            answers.add(each.get());
        }
        many.shutdown();
        assertTrue(answers.stream().filter(status -> status == 403).count() <= 10, answers.toString());
        assertTrue(answers.contains(429), answers.toString());
        assertEquals(429, served.phone().enter("R1", served.secret("R1")).statusCode());
    }

    @Test
    void whoEntersRightlyAgainAndAgainIsNotLockedOut() throws Exception {
        for (int i = 0; i < 15; i++) {
            assertEquals(200, served.phone().enter("R1", served.secret("R1")).statusCode());
        }
    }

    @Test
    void anotherNameThatLeadsHereIsNotAnswered() throws Exception {
        Phone phone = served.entered("R1");
        for (String other : NAMES) {
            String answer = raw("GET /api/round HTTP/1.1\r\nHost: " + other + "\r\nCookie: " + phone.cookie()
                    + "\r\nConnection: close\r\n\r\n");
            assertTrue(answer.startsWith("HTTP/1.1 4"), other + ": " + answer);
            assertFalse(answer.contains("K-101"), other);
            assertSafe(answer);
        }
    }

    @Test
    void anotherNameInTheRequestLineIsNotAnsweredEither() throws Exception {
        String answer = raw("GET http://evil.example/ HTTP/1.1\r\nHost: " + host() + "\r\nConnection: close\r\n\r\n");
        assertTrue(answer.startsWith("HTTP/1.1 4"), answer);
    }

    @Test
    void aPageOfAnotherSiteChangesAndReadsNothing() throws Exception {
        Phone phone = served.entered("R1");
        String body = "{\"events\":[]}";
        assertEquals(200, changing(phone, body).statusCode());
        assertEquals(403, changing(phone, body, "Origin", "http://evil.example").statusCode());
        assertEquals(403, changing(phone, body, "Origin", "null").statusCode());
        assertEquals(403, changing(phone, body, "Origin", "https://" + host()).statusCode());
        assertEquals(403, changing(phone, body, "Sec-Fetch-Site", "cross-site").statusCode());
        assertEquals(403, changing(phone, body, "Sec-Fetch-Site", "same-site").statusCode());
        HttpRequest.Builder form = HttpRequest.newBuilder(served.address().resolve("/api/events"))
                .header("Content-Type", "text/plain").header("X-Slotledger-Page", phone.page())
                .POST(HttpRequest.BodyPublishers.ofString(body));
        assertEquals(415, phone.ask(form).statusCode());
        HttpRequest.Builder bare = HttpRequest.newBuilder(served.address().resolve("/api/events"))
                .header("Content-Type", "application/json").POST(HttpRequest.BodyPublishers.ofString(body));
        assertEquals(403, phone.ask(bare).statusCode());
        HttpRequest.Builder guessed = HttpRequest.newBuilder(served.address().resolve("/api/events"))
                .header("Content-Type", "application/json").header("X-Slotledger-Page", served.entered("R2").page())
                .POST(HttpRequest.BodyPublishers.ofString(body));
        assertEquals(403, phone.ask(guessed).statusCode());
        assertEquals(403, phone.ask(HttpRequest.newBuilder(served.address().resolve("/api/round"))
                .header("Sec-Fetch-Site", "cross-site")).statusCode());
    }

    @Test
    void largeDeepAndBrokenBodiesAreRefusedAndTheServerGoesOn() throws Exception {
        Phone phone = served.entered("R1");
        assertEquals(413, phone.post("/api/events", "{\"events\":[\"" + "x".repeat(300_000) + "\"]}").statusCode());
        try {
            assertEquals(413, phone.ask(HttpRequest.newBuilder(served.address().resolve("/api/events"))
                    .header("Content-Type", "application/json").header("X-Slotledger-Page", phone.page())
                    .POST(HttpRequest.BodyPublishers.ofInputStream(() -> new Endless(2_000_000)))).statusCode());
        } catch (IOException endedWhileItCameIn) {
            // The connection is closed on who goes on sending; whether the answer is seen before that is luck.
        }
        for (String body : List.of("", "[]", "{", "null", "{\"events\":" + "[".repeat(2_000) + "]".repeat(2_000) + "}",
                "{\"events\":{}}", "{\"events\":[" + "1,".repeat(300) + "1]}", "\u0000")) {
            assertEquals(400, phone.post("/api/events", body).statusCode(), body);
        }
        assertEquals(200, phone.post("/api/events", "{\"events\":[1,null,\"x\",{}]}").statusCode());
        assertEquals(0, served.work.recorded.size());
        assertEquals(200, phone.round().statusCode());
    }

    @Test
    void headersThatAreTooLongOrCarryLineEndsAreRefused() throws Exception {
        String longOne = raw("GET / HTTP/1.1\r\nHost: " + host() + "\r\nX: " + "x".repeat(20_000) + "\r\n\r\n");
        assertTrue(longOne.startsWith("HTTP/1.1 431"), longOne);
        String path = raw("GET /%0d%0aSet-Cookie:%20slotledger=x HTTP/1.1\r\nHost: " + host()
                + "\r\nConnection: close\r\n\r\n");
        assertFalse(path.contains("Set-Cookie"), path);
        served.work.rounds = List.of();
        String tag = raw("GET / HTTP/1.1\r\nHost: " + host() + "\r\nIf-None-Match: \"x\r\n y\"\r\n\r\n");
        assertFalse(tag.contains(" y\""), tag);
        assertSafe(longOne);
        assertSafe(path);
    }

    @Test
    void slowClientsAreEndedWhileOthersAreServed() throws Exception {
        Phone phone = served.entered("R1");
        List<Socket> slow = new ArrayList<>();
        try {
            for (int i = 0; i < 10; i++) {
                slow.add(begun(i % 2 == 0 ? "GET / HT" : "POST /api/events HTTP/1.1\r\nHost: " + host() + "\r\nCookie: "
                        + phone.cookie() + "\r\nContent-Type: application/json\r\nX-Slotledger-Page: " + phone.page()
                        + "\r\nContent-Length: 1000\r\n\r\n{"));
            }
            long end = System.nanoTime() + Duration.ofSeconds(5).toNanos();
            Set<Integer> open = new TreeSet<>(List.of(0, 1, 2, 3, 4, 5, 6, 7, 8, 9));
            while (!open.isEmpty() && System.nanoTime() < end) {
                open.removeIf(each -> !drips(slow.get(each)));
                assertEquals(200, phone.round().statusCode());
                Thread.sleep(150);
            }
            assertEquals(Set.of(), open, "still connected after 5 s of dripping");
        } finally {
            for (Socket each : slow) {
                each.close();
            }
        }
    }

    @Test
    void oneAddressGetsNoMoreThanItsShareOfConnections() throws Exception {
        List<Socket> many = new ArrayList<>();
        try {
            for (int i = 0; i < 40; i++) {
                many.add(begun("GET / HT"));
            }
            Thread.sleep(200);
            long alive = many.stream().filter(AttackTest::drips).count();
            assertTrue(alive <= LIMITS.connections(), alive + " connections");
        } finally {
            for (Socket each : many) {
                each.close();
            }
        }
    }

    @Test
    void oneAddressGetsNoMoreThanItsShareOfRequests() throws Exception {
        served.close();
        served = new Served(project.resolve("other"), new Limits(10, 60, Duration.ofMinutes(15), 30, 24, 400, 1_000, 10,
                Duration.ofSeconds(5), Duration.ofSeconds(5)), Clock.systemUTC());
        Phone phone = served.phone();
        List<Integer> answers = new ArrayList<>();
        for (int i = 0; i < 40; i++) {
            answers.add(phone.get("/").statusCode());
        }
        assertEquals(30, answers.stream().filter(status -> status == 200).count());
        assertEquals(10, answers.stream().filter(status -> status == 429).count());
    }

    @Test
    void everyAnswerCarriesTheSafeHeadersAndDataIsNotStored() throws Exception {
        Phone phone = served.entered("R1");
        for (HttpResponse<String> answer : List.of(phone.get("/"), phone.round(), phone.get("/nothing"),
                phone.post("/api/events", "{"), served.phone().round())) {
            String policy = answer.headers().firstValue("Content-Security-Policy").orElse("");
            assertTrue(policy.contains("default-src 'none'") && policy.contains("frame-ancestors 'none'"), policy);
            assertFalse(policy.contains("unsafe") || policy.contains("*"), policy);
            assertEquals("nosniff", answer.headers().firstValue("X-Content-Type-Options").orElse(""));
            assertEquals("no-referrer", answer.headers().firstValue("Referrer-Policy").orElse(""));
            assertEquals(List.of(), answer.headers().allValues("Server"));
            assertEquals(List.of(), answer.headers().allValues("Access-Control-Allow-Origin"));
        }
        assertEquals("no-store", phone.round().headers().firstValue("Cache-Control").orElse(""));
        String cookie = served.phone().enter("R1", served.secret("R1")).headers().firstValue("Set-Cookie").orElse("");
        assertTrue(cookie.contains("HttpOnly") && cookie.contains("SameSite=Strict"), cookie);
    }

    @Test
    void otherMethodsAreNotAnswered() throws Exception {
        for (String method : List.of("PUT", "DELETE", "TRACE", "OPTIONS", "CONNECT", "POST")) {
            String answer = raw(method + " / HTTP/1.1\r\nHost: " + host()
                    + "\r\nX-Secret: mirror\r\nContent-Length: 0\r\nConnection: close\r\n\r\n");
            assertTrue(answer.startsWith("HTTP/1.1 4"), answer);
            assertFalse(answer.contains("mirror"), answer);
        }
    }

    @Test
    void noSecretOrTokenIsLogged() throws Exception {
        List<String> lines = new ArrayList<>();
        Handler listener = new Handler() {
            @Override
            public synchronized void publish(LogRecord line) {
                lines.add(line.getMessage() + " " + List.of(line.getParameters() == null ? new Object[0]
                        : line.getParameters()) + " " + line.getThrown());
            }

            @Override
            public void flush() {
            }

            @Override
            public void close() {
            }
        };
        Logger root = Logger.getLogger("");
        root.addHandler(listener);
        try {
            Phone phone = served.entered("R1");
            served.work.broken = true;
            phone.tell(Phone.event("K-101", "ticked").put("step", 1).put("done", true));
            String all = String.join("\n", lines);
            assertTrue(all.contains("had to wait"), all);
            assertFalse(all.contains(served.secret("R1")) || all.contains(phone.cookie().substring(11))
                    || all.contains(phone.page()), all);
        } finally {
            root.removeHandler(listener);
        }
    }

    private HttpResponse<String> changing(Phone phone, String body, String... header) throws Exception {
        HttpRequest.Builder request = HttpRequest.newBuilder(served.address().resolve("/api/events"))
                .header("Content-Type", "application/json").header("X-Slotledger-Page", phone.page())
                .POST(HttpRequest.BodyPublishers.ofString(body));
        if (header.length == 2) {
            request.header(header[0], header[1]);
        }
        return phone.ask(request);
    }

    private String host() {
        return served.address().getAuthority();
    }

    private Socket begun(String text) throws IOException {
        Socket socket = new Socket("127.0.0.1", served.address().getPort());
        try {
            socket.getOutputStream().write(text.getBytes(StandardCharsets.ISO_8859_1));
        } catch (SocketException ended) {
            // The server may end one of too many before anything is said.
        }
        return socket;
    }

    /** Says one more letter; false where the other side has ended the connection. */
    private static boolean drips(Socket socket) {
        try {
            socket.setSoTimeout(10);
            OutputStream out = socket.getOutputStream();
            out.write('x');
            out.flush();
            InputStream in = socket.getInputStream();
            while (in.read() >= 0) {
                // An answer before the end is all right.
            }
            return false;
        } catch (java.net.SocketTimeoutException open) {
            return true;
        } catch (IOException ended) {
            return false;
        }
    }

    private String raw(String request) throws IOException {
        try (Socket socket = new Socket("127.0.0.1", served.address().getPort())) {
            socket.setSoTimeout(5_000);
            socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
            return new String(socket.getInputStream().readAllBytes(), StandardCharsets.ISO_8859_1);
        }
    }

    /** Nothing of the inside, and the headers that keep a browser from running or framing it. */
    private static void assertSafe(String answer) {
        assertTrue(answer.contains("Content-Security-Policy: default-src 'none'"), answer);
        assertFalse(answer.contains("jetty") || answer.contains("\tat ") || answer.contains("Exception"), answer);
        assertFalse(answer.contains("hash"), answer);
    }

    /** A body whose length nobody says. */
    private static final class Endless extends InputStream {

        private int left;

        Endless(int left) {
            this.left = left;
        }

        @Override
        public int read() {
            return left-- > 0 ? 'x' : -1;
        }
    }
}
