package slotledger.serve.internal.http;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import org.eclipse.jetty.http.HttpFields;
import org.eclipse.jetty.http.HttpHeader;
import org.eclipse.jetty.server.Request;
import org.eclipse.jetty.server.Response;
import org.eclipse.jetty.server.handler.ErrorHandler;
import org.eclipse.jetty.util.Callback;

/** What is said where a request can't even be read: one sentence, and nothing of the inside or of what was sent. */
final class PlainErrors extends ErrorHandler {

    private static final byte[] SENTENCE = "This request can't be read here.\n".getBytes(StandardCharsets.UTF_8);
    private static final String TEXT = "text/plain;charset=utf-8";

    PlainErrors() {
        setShowStacks(false);
        setShowCauses(false);
        setShowMessageInTitle(false);
    }

    @Override
    public boolean handle(Request request, Response response, Callback callback) {
        fill(response.getHeaders());
        response.write(true, ByteBuffer.wrap(SENTENCE), callback);
        return true;
    }

    private static void fill(HttpFields.Mutable headers) {
        SafeHeaders.add(headers);
        headers.put(HttpHeader.CONTENT_TYPE, TEXT);
        headers.put(HttpHeader.CACHE_CONTROL, "no-store");
        headers.put(HttpHeader.CONTENT_LENGTH, SENTENCE.length);
    }
}
