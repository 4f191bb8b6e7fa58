package slotledger.serve.internal.http;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.StreamReadConstraints;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.InputStream;
import org.eclipse.jetty.io.Content;
import org.eclipse.jetty.server.Request;

/** Reads the body of a request, within bounds of size, depth and time. */
final class Bodies {

    private static final int DEEPEST = 8;
    private static final int LONGEST_NUMBER = 30;
    private static final int PIECE = 8 * 1024;

    private final Limits limits;
    private final ObjectMapper json;

    Bodies(Limits limits) {
        this.limits = limits;
        this.json = new ObjectMapper(JsonFactory.builder().streamReadConstraints(StreamReadConstraints.builder()
                .maxNestingDepth(DEEPEST).maxNumberLength(LONGEST_NUMBER).maxStringLength(limits.bodyBytes()).build())
                .build());
    }

    JsonNode read(Request request) throws RefusedException, IOException {
        if (request.getLength() > limits.bodyBytes()) {
            throw tooLarge();
        }
        long end = System.nanoTime() + limits.wholeRequest().toNanos();
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        byte[] piece = new byte[PIECE];
        try (InputStream in = Content.Source.asInputStream(request)) {
            for (int count = in.read(piece); count >= 0; count = in.read(piece)) {
                bytes.write(piece, 0, count);
                if (bytes.size() > limits.bodyBytes()) {
                    throw tooLarge();
                }
                if (System.nanoTime() > end) {
                    throw new RefusedException(408, "This took too long to arrive. It is sent again by itself.");
                }
            }
        }
        try {
            JsonNode node = json.readTree(bytes.toByteArray());
            if (node == null || !node.isObject()) {
                throw unreadable();
            }
            return node;
        } catch (JsonProcessingException problem) {
            throw unreadable();
        }
    }

    private RefusedException tooLarge() {
        return new RefusedException(413, "This is larger than the " + limits.bodyBytes() / 1024 + " KB that are read.");
    }

    private static RefusedException unreadable() {
        return new RefusedException(400, "What was sent is not the JSON that is read here.");
    }
}
