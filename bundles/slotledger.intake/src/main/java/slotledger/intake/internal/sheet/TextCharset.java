package slotledger.intake.internal.sheet;

import java.io.IOException;
import java.io.InputStream;
import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.Charset;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import slotledger.model.task.Progress;

/**
 * How the bytes of a text file stand for characters.
 *
 * @param charset the encoding
 * @param mark    bytes of the byte order mark to leave out
 */
record TextCharset(Charset charset, int mark) {

    static final Charset WINDOWS_1252 = Charset.forName("windows-1252");

    private static final int BUFFER = 1 << 16;
    private static final int HEAD = 4096;

    /** The encoding a byte order mark tells; null where there is none. */
    static TextCharset byteOrderMark(byte[] head) {
        if (starts(head, 0xEF, 0xBB, 0xBF)) {
            return new TextCharset(StandardCharsets.UTF_8, 3);
        }
        if (starts(head, 0xFF, 0xFE)) {
            return new TextCharset(StandardCharsets.UTF_16LE, 2);
        }
        if (starts(head, 0xFE, 0xFF)) {
            return new TextCharset(StandardCharsets.UTF_16BE, 2);
        }
        return null;
    }

    private static boolean starts(byte[] head, int... mark) {
        for (int i = 0; i < mark.length; i++) {
            if (i >= head.length || (head[i] & 0xff) != mark[i]) {
                return false;
            }
        }
        return true;
    }

    /**
     * Finds the encoding: by the mark; UTF-16 by the zero bytes that Latin letters, digits and separators have in it;
     * UTF-8 where every byte of the file allows it; else Windows-1252, which anything can be.
     */
    static TextCharset of(Path file, Progress progress) throws IOException {
        byte[] head = SheetFiles.head(file, HEAD);
        TextCharset marked = byteOrderMark(head);
        if (marked != null) {
            return marked;
        }
        Charset wide = wide(head);
        if (wide != null) {
            return new TextCharset(wide, 0);
        }
        return new TextCharset(isUtf8(file, progress) ? StandardCharsets.UTF_8 : WINDOWS_1252, 0);
    }

    private static Charset wide(byte[] head) {
        int[] zeros = new int[2];
        for (int i = 0; i < head.length; i++) {
            zeros[i % 2] += head[i] == 0 ? 1 : 0;
        }
        int pairs = head.length / 2;
        if (pairs == 0 || Math.min(zeros[0], zeros[1]) * 20 > pairs) {
            return null;
        }
        if (zeros[1] * 3 > pairs) {
            return StandardCharsets.UTF_16LE;
        }
        return zeros[0] * 3 > pairs ? StandardCharsets.UTF_16BE : null;
    }

    private static boolean isUtf8(Path file, Progress progress) throws IOException {
        CharsetDecoder decoder = StandardCharsets.UTF_8.newDecoder()
                .onMalformedInput(CodingErrorAction.REPORT).onUnmappableCharacter(CodingErrorAction.REPORT);
        byte[] bytes = new byte[BUFFER];
        CharBuffer sink = CharBuffer.allocate(BUFFER);
        boolean valid = true;
        int kept = 0;
        int line = 1;
        try (InputStream in = Files.newInputStream(file)) {
            for (int count = in.read(bytes, kept, BUFFER - kept); count >= 0;
                    count = in.read(bytes, kept, BUFFER - kept)) {
                progress.check();
                line += linesBeforeNul(bytes, kept, kept + count, line);
                ByteBuffer filled = ByteBuffer.wrap(bytes, 0, kept + count);
                if (valid) {
                    sink.clear();
                    valid = !decoder.decode(filled, sink, false).isError();
                }
                kept = valid ? filled.remaining() : 0;
                System.arraycopy(bytes, filled.position(), bytes, 0, kept);
            }
        }
        return valid && kept == 0;
    }

    /** Line ends among some bytes; a zero byte there means that the file is no text. */
    private static int linesBeforeNul(byte[] bytes, int from, int to, int line) throws BadSheetException {
        int ends = 0;
        for (int i = from; i < to; i++) {
            if (bytes[i] == '\n') {
                ends++;
            } else if (bytes[i] == 0) {
                throw new BadSheetException("text-has-zero-bytes",
                        "The file holds zero bytes: it is damaged, or no text at all.",
                        "a .csv file in UTF-8, UTF-16 or Windows-1252",
                        "Export the list again, as .xlsx if you can.").at("", line + ends);
            }
        }
        return ends;
    }
}
