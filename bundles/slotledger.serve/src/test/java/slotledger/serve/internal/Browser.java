package slotledger.serve.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.Base64;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/** Chromium at the size of a phone, driven by the protocol of browsers (W3C WebDriver). */
final class Browser implements AutoCloseable {

    private static final int WIDTH = 360;
    private static final int HEIGHT = 740;
    private static final Duration PATIENCE = Duration.ofSeconds(10);
    private static final String ELEMENT = "element-6066-11e4-a52e-4f735466cecf";
    private static final List<String> FLAGS = List.of("--headless", "--no-sandbox", "--disable-gpu", "--disable-quic",
            "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync");

    private static final ObjectMapper JSON = new ObjectMapper();
    private static final HttpClient CLIENT = HttpClient.newHttpClient();

    private final Process driver;
    private final URI address;
    private String session = "";

    private Browser(Process driver, int port) {
        this.driver = driver;
        this.address = URI.create("http://127.0.0.1:" + port);
    }

    /** Opens a browser; the calling test is skipped, or fails, where there is none. */
    static Browser open(Path profile, String... moreFlags) throws IOException, InterruptedException {
        Path program = Path.of("/usr/bin/chromedriver");
        String message = "Chromium is missing: the Debian packages chromium and chromium-driver";
        if (!Files.isExecutable(program) && Boolean.parseBoolean(System.getenv("SLOTLEDGER_OUTSIDE_REQUIRED"))) {
            Assertions.fail(message);
        }
        Assumptions.assumeTrue(Files.isExecutable(program), message);
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        Process driver = new ProcessBuilder(program.toString(), "--port=" + port)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).redirectErrorStream(true).start();
        Browser browser = new Browser(driver, port);
        try {
            browser.begin(profile, moreFlags);
        } catch (IOException | InterruptedException | RuntimeException problem) {
            browser.close();
            throw problem;
        }
        return browser;
    }

    private void begin(Path profile, String... moreFlags) throws IOException, InterruptedException {
        await("the driver to listen", () -> {
            try {
                return ask("GET", "/status", null).path("ready").asBoolean();
            } catch (UncheckedIOException notYet) {
                return false;
            }
        });
        ObjectNode capabilities = JSON.createObjectNode();
        ObjectNode chrome = capabilities.putObject("capabilities").putObject("alwaysMatch")
                .putObject("goog:chromeOptions");
        ArrayNode arguments = chrome.putArray("args");
        Stream.concat(FLAGS.stream(), Stream.of(moreFlags)).forEach(arguments::add);
        arguments.add("--user-data-dir=" + profile);
        ObjectNode size = chrome.putObject("mobileEmulation").putObject("deviceMetrics");
        size.put("width", WIDTH).put("height", HEIGHT).put("pixelRatio", 2).put("touch", true).put("mobile", true);
        session = "/session/" + ask("POST", "/session", capabilities).path("sessionId").asText();
    }

    void go(URI page) {
        ask("POST", session + "/url", JSON.createObjectNode().put("url", page.toString()));
    }

    void reload() {
        ask("POST", session + "/refresh", JSON.createObjectNode());
    }

    /** What a function body returns in the page. */
    JsonNode run(String script, Object... arguments) {
        ObjectNode body = JSON.createObjectNode().put("script", script);
        body.set("args", JSON.valueToTree(arguments));
        return ask("POST", session + "/execute/sync", body);
    }

    boolean has(String selector) {
        return run("return document.querySelector(arguments[0]) !== null", selector).asBoolean();
    }

    String text(String selector) {
        return run("const e = document.querySelector(arguments[0]); return e ? e.innerText : ''", selector).asText();
    }

    void awaitText(String selector, String wanted) {
        await(selector + " to say \"" + wanted + "\"", () -> text(selector).contains(wanted));
    }

    /** A tap as a finger does it: scrolls there, and fails where something lies above. */
    void tap(String selector) {
        run("document.querySelector(arguments[0]).scrollIntoView({block: 'center', behavior: 'instant'})", selector);
        ask("POST", session + "/element/" + find("css selector", selector) + "/click", JSON.createObjectNode());
    }

    void tapButton(String text) {
        String element = find("xpath", "//button[normalize-space()='" + text + "']");
        ObjectNode body = JSON.createObjectNode().put("script",
                "arguments[0].scrollIntoView({block: 'center', behavior: 'instant'})");
        body.putArray("args").addObject().put(ELEMENT, element);
        ask("POST", session + "/execute/sync", body);
        ask("POST", session + "/element/" + element + "/click", JSON.createObjectNode());
    }

    void type(String selector, String text) {
        ask("POST", session + "/element/" + find("css selector", selector) + "/value",
                JSON.createObjectNode().put("text", text));
    }

    /** Cuts this page off, as a dead spot does; the service worker has a connection of its own. */
    void cutOff(boolean offline) {
        ObjectNode body = JSON.createObjectNode();
        body.putObject("network_conditions").put("offline", offline).put("latency", 0)
                .put("download_throughput", 500_000).put("upload_throughput", 500_000);
        ask("POST", session + "/chromium/network_conditions", body);
    }

    void dark(boolean dark) {
        ObjectNode body = JSON.createObjectNode().put("cmd", "Emulation.setEmulatedMedia");
        body.putObject("params").putArray("features").addObject().put("name", "prefers-color-scheme")
                .put("value", dark ? "dark" : "light");
        ask("POST", session + "/goog/cdp/execute", body);
    }

    void picture(Path file) throws IOException {
        Files.write(file, Base64.getDecoder().decode(ask("GET", session + "/screenshot", null).asText()));
    }

    private String find(String by, String what) {
        return ask("POST", session + "/element", JSON.createObjectNode().put("using", by).put("value", what))
                .path(ELEMENT).asText();
    }

    static void await(String what, BooleanSupplier condition) {
        long end = System.nanoTime() + PATIENCE.toNanos();
        while (!condition.getAsBoolean()) {
            if (System.nanoTime() > end) {
                Assertions.fail("Waited in vain for " + what);
            }
            try {
                Thread.sleep(40);
            } catch (InterruptedException stopped) {
                throw new IllegalStateException(stopped);
            }
        }
    }

    private JsonNode ask(String method, String path, JsonNode body) {
        HttpRequest request = HttpRequest.newBuilder(URI.create(address + path)).timeout(Duration.ofSeconds(30))
                .method(method, body == null ? HttpRequest.BodyPublishers.noBody()
                        : HttpRequest.BodyPublishers.ofString(body.toString())).build();
        try {
            HttpResponse<String> answer = CLIENT.send(request, HttpResponse.BodyHandlers.ofString());
            JsonNode value = JSON.readTree(answer.body()).path("value");
            if (answer.statusCode() != 200) {
                throw new AssertionError(path + ": " + value.path("message").asText());
            }
            return value;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        } catch (InterruptedException stopped) {
            throw new IllegalStateException(stopped);
        }
    }

    @Override
    public void close() {
        try {
            if (!session.isEmpty()) {
                ask("DELETE", session, null);
            }
        } finally {
            driver.destroy();
            try {
                if (!driver.waitFor(5, TimeUnit.SECONDS)) {
                    driver.destroyForcibly();
                }
            } catch (InterruptedException stopped) {
                Thread.currentThread().interrupt();
            }
        }
    }
}
