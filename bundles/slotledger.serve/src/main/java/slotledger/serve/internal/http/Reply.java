package slotledger.serve.internal.http;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.Map;

/**
 * What is answered.
 *
 * @param status  of HTTP
 * @param type    of the body
 * @param body    may be empty
 * @param headers beyond those that every answer has
 */
record Reply(int status, String type, byte[] body, Map<String, String> headers) {

    private static final ObjectMapper JSON = new ObjectMapper();

    static Reply json(int status, JsonNode node, Map<String, String> headers) {
        try {
            return new Reply(status, "application/json", JSON.writeValueAsBytes(node), headers);
        } catch (IOException impossible) {
            throw new UncheckedIOException("A tree of JSON must have a text.", impossible);
        }
    }

    static Reply json(JsonNode node) {
        return json(200, node, Map.of());
    }

    /** A sentence for people, where programs look for one, too. */
    static Reply problem(int status, String sentence) {
        Map<String, String> headers = status == 429 || status == 503 ? Map.of("Retry-After", "30") : Map.of();
        return json(status, JSON.createObjectNode().put("problem", sentence), headers);
    }
}
