package slotledger.firmware.internal.file;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.Optional;

/** Tells text from bytes. */
public final class TextBytes {

    /** Listings carry what firmware has in its texts, which may be anything, here and there. */
    private static final int TEXT_TO_STRANGE = 50;
    private static final char BYTE_ORDER_MARK = '\uFEFF';

    private TextBytes() {
    }

    /** The text in UTF-8, in UTF-16 with a byte order mark as Windows shells write it, or in Latin 1. */
    public static Optional<String> decode(byte[] content) {
        if (content.length == 0) {
            return Optional.empty();
        }
        if (content.length > 1 && (content[0] & 0xFF) == 0xFF && (content[1] & 0xFF) == 0xFE) {
            return strict(content, StandardCharsets.UTF_16LE);
        }
        if (content.length > 1 && (content[0] & 0xFF) == 0xFE && (content[1] & 0xFF) == 0xFF) {
            return strict(content, StandardCharsets.UTF_16BE);
        }
        int strange = 0;
        for (byte one : content) {
            if (one == 0) {
                return Optional.empty();
            }
            if (one > 0 && one < ' ' && one != '\n' && one != '\r' && one != '\t' && one != '\f') {
                strange++;
            }
        }
        if (strange > content.length / TEXT_TO_STRANGE) {
            return Optional.empty();
        }
        return strict(content, StandardCharsets.UTF_8).or(() -> strict(content, StandardCharsets.ISO_8859_1));
    }

    private static Optional<String> strict(byte[] content, Charset charset) {
        try {
            String text = charset.newDecoder().decode(ByteBuffer.wrap(content)).toString();
            return Optional.of(!text.isEmpty() && text.charAt(0) == BYTE_ORDER_MARK ? text.substring(1) : text);
        } catch (CharacterCodingException other) {
            return Optional.empty();
        }
    }
}
