package slotledger.firmware.internal.words;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Names of makers by JEDEC's numbers (JEP106); the list and its source are in {@code jep106.txt}. */
public final class Jep106 {

    private static final int CONTINUATION = 0x7F;
    private static final int PARITY = 0x80;
    private static final int PER_BANK = 0x80;
    /** "859B", "80AD", "0x2C00", "JEDEC ID:80 AD": firmware that knows no names. */
    private static final Pattern NUMBER =
            Pattern.compile("(?:JEDEC ID: ?|0x)?([0-9A-F]{2}) ?([0-9A-F]{2})(?:0{4}|0{12})?",
                    Pattern.CASE_INSENSITIVE);
    /** "7F7F7F7F7F510000": as the eight bytes of an older SPD. */
    private static final Pattern BYTES = Pattern.compile("((?:7F)*)([0-9A-F]{2})(?:00)+", Pattern.CASE_INSENSITIVE);
    private static final Map<Integer, String> NAMES = load();

    private Jep106() {
    }

    /**
     * The maker of two bytes as in an SPD since DDR3, and in SMBIOS.
     *
     * @param continuations how many continuation codes come first, with a parity bit
     * @param code          with a parity bit
     */
    public static Optional<String> ofPair(int continuations, int code) {
        return ofBank((continuations & CONTINUATION) + 1, code);
    }

    /** The maker of the eight bytes of an older SPD: continuation codes, then the code. */
    public static Optional<String> ofBytes(byte[] data, int at, int size) {
        for (int i = 0; i < size; i++) {
            int code = data[at + i] & 0xFF;
            if (code != CONTINUATION) {
                return ofBank(i + 1, code);
            }
        }
        return Optional.empty();
    }

    /** The maker that a text of hexadecimal digits means; empty for a text that is no such number. */
    public static Optional<String> ofText(String text) {
        Matcher bytes = BYTES.matcher(text.strip());
        if (bytes.matches() && text.strip().length() == 2 * Long.BYTES) {
            return ofBank(bytes.group(1).length() / 2 + 1, Integer.parseInt(bytes.group(2), 16));
        }
        Matcher matcher = NUMBER.matcher(text.strip());
        if (!matcher.matches()) {
            return Optional.empty();
        }
        int first = Integer.parseInt(matcher.group(1), 16);
        int second = Integer.parseInt(matcher.group(2), 16);
        return second == 0 ? ofBank(1, first) : ofPair(first, second);
    }

    static Optional<String> ofBank(int bank, int code) {
        return Optional.ofNullable(NAMES.get(bank * PER_BANK + (code & CONTINUATION)));
    }

    /** Whether a byte has an odd number of set bits, as every code of the list. */
    public static boolean hasOddParity(int code) {
        return Integer.bitCount(code & 0xFF) % 2 == 1;
    }

    static Map<Integer, String> names() {
        return Map.copyOf(NAMES);
    }

    /** "1 CE Samsung": bank, code with parity, name. */
    private static Map<Integer, String> load() {
        Map<Integer, String> names = new HashMap<>();
        try (InputStream stream = Jep106.class.getResourceAsStream("jep106.txt");
                BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8))) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                if (!line.isBlank() && !line.startsWith("#")) {
                    String[] parts = line.split(" ", 3);
                    int code = Integer.parseInt(parts[1], 16) & (PARITY - 1);
                    names.put(Integer.parseInt(parts[0]) * PER_BANK + code, parts[2]);
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException("The list of makers in the bundle must be readable.", e);
        }
        return names;
    }
}
