package slotledger.serve.internal;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.time.Duration;
import java.time.Instant;
import java.util.UUID;

/** What a phone does, without a browser. */
final class Phone {

    static final ObjectMapper JSON = new ObjectMapper();

    private final HttpClient client;
    private final URI address;
    private String cookie = "";
    private String page = "enter";

    Phone(HttpClient client, URI address) {
        this.client = client;
        this.address = address;
    }

    Phone(URI address) {
        this(HttpClient.newBuilder().connectTimeout(Duration.ofSeconds(5)).build(), address);
    }

    HttpResponse<String> enter(String round, String secret) throws IOException, InterruptedException {
        HttpResponse<String> answer = post("/api/enter",
                JSON.createObjectNode().put("round", round).put("secret", secret).toString());
        answer.headers().firstValue("Set-Cookie").ifPresent(set -> cookie = set.substring(0, set.indexOf(';')));
        if (answer.statusCode() == 200) {
            page = JSON.readTree(answer.body()).path("page").asText();
        }
        return answer;
    }

    HttpResponse<String> round() throws IOException, InterruptedException {
        return get("/api/round");
    }

    JsonNode send(ObjectNode... events) throws IOException, InterruptedException {
        HttpResponse<String> answer = tell(events);
        if (answer.statusCode() != 200) {
            throw new AssertionError(answer.statusCode() + ": " + answer.body());
        }
        return JSON.readTree(answer.body());
    }

    HttpResponse<String> tell(ObjectNode... events) throws IOException, InterruptedException {
        ObjectNode body = JSON.createObjectNode();
        for (ObjectNode event : events) {
            body.withArray("events").add(event);
        }
        return post("/api/events", body.toString());
    }

    static ObjectNode event(String machine, String kind) {
        return JSON.createObjectNode().put("id", UUID.randomUUID().toString()).put("machine", machine).put("plan", 1)
                .put("at", Instant.now().toString()).put("kind", kind);
    }

    HttpResponse<String> get(String path) throws IOException, InterruptedException {
        return ask(HttpRequest.newBuilder(address.resolve(path)).GET());
    }

    HttpResponse<String> post(String path, String body) throws IOException, InterruptedException {
        return ask(HttpRequest.newBuilder(address.resolve(path)).header("Content-Type", "application/json")
                .header("X-Slotledger-Page", page).POST(HttpRequest.BodyPublishers.ofString(body)));
    }

    /** With this phone's cookie. */
    HttpResponse<String> ask(HttpRequest.Builder request) throws IOException, InterruptedException {
        if (!cookie.isEmpty()) {
            request.header("Cookie", cookie);
        }
        return client.send(request.timeout(Duration.ofSeconds(20)).build(), HttpResponse.BodyHandlers.ofString());
    }

    String cookie() {
        return cookie;
    }

    String page() {
        return page;
    }
}
