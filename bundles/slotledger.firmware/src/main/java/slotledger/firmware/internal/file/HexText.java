package slotledger.firmware.internal.file;

import java.io.ByteArrayOutputStream;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Reads hex dumps: plain digits, and what the usual tools print:
 *
 * <pre>
 * 92 13 0B 02 04 21 00 09
 * 00000000  92 13 0b 02 04 21 00 09  0b 11 01 08 0a 00 fc 00  |.....!..........|
 * 00: 92 13 0b 02 04 21 00 09 0b 11 01 08 0a 00 fc 00    ???.?!.????.?.?.
 * 00000000: 9213 0b02 0421 0009 0b11 0108 0a00 fc00  .....!..........
 * </pre>
 */
public final class HexText {

    private static final Pattern ADDRESS = Pattern.compile(
            "\\s*(?:0x)?([0-9A-Fa-f]{2,16})(:|\\s(?=\\s*[0-9A-Fa-f]{2}\\b))");
    private static final Pattern GROUP = Pattern.compile("\\s*(?:0x)?((?:[0-9A-Fa-f]{2}){1,8})(?=[\\s,]|$),?");
    private static final int BYTES_A_LINE = 16;
    private static final int MOST_BYTES = 1 << 22;

    private HexText() {
    }

    /** The bytes; empty where a line that is no comment has none. */
    public static Optional<byte[]> read(String text) {
        ByteArrayOutputStream bytes = new ByteArrayOutputStream();
        boolean addressed = isAddressed(text);
        for (String line : (Iterable<String>) text.lines()::iterator) {
            String content = line.replaceFirst("(#|//|\\|).*", "");
            if (content.isBlank() || bytes.size() > MOST_BYTES) {
                continue;
            }
            int before = bytes.size();
            line(content, addressed, bytes);
            if (bytes.size() == before && before > 0 && !content.strip().matches("[*]|[0-9A-Fa-f]{4,}")) {
                return Optional.empty();
            }
        }
        return bytes.size() == 0 ? Optional.empty() : Optional.of(bytes.toByteArray());
    }

    /** Whether lines begin with an address: the first two that have one are a line apart. */
    private static boolean isAddressed(String text) {
        long previous = -1;
        for (String line : (Iterable<String>) text.lines()::iterator) {
            Matcher matcher = ADDRESS.matcher(line);
            if (matcher.lookingAt() && (matcher.group(1).length() > 2 || matcher.group(2).equals(":"))) {
                long address = Long.parseUnsignedLong(matcher.group(1), 16);
                if (matcher.group(2).equals(":") || previous >= 0 && address - previous == BYTES_A_LINE) {
                    return true;
                }
                previous = address;
            }
        }
        return false;
    }

    private static void line(String content, boolean addressed, ByteArrayOutputStream bytes) {
        int at = 0;
        if (addressed) {
            Matcher address = ADDRESS.matcher(content);
            if (!address.lookingAt()) {
                return;
            }
            at = address.end();
        }
        Matcher group = GROUP.matcher(content);
        int taken = 0;
        while (at < content.length() && group.region(at, content.length()).lookingAt()
                && !(addressed && taken >= BYTES_A_LINE)) {
            String digits = group.group(1);
            for (int i = 0; i < digits.length(); i += 2) {
                bytes.write(Integer.parseInt(digits.substring(i, i + 2), 16));
                taken++;
            }
            at = group.end();
        }
    }
}
