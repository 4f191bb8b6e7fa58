package slotledger.firmware;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;

/** Writes SMBIOS structures as text: the bytes of the formatted part, then strings. */
final class TableText {

    static final String ARRAY = "10 0F 00 10 03 03 03 00 00 00 02 FE FF 02 00";
    static final String END = "7F 04 FF FE";

    private final ByteArrayOutputStream bytes = new ByteArrayOutputStream();

    /** A device of version 2.3 in slot "A", with its size word, form, type and rate word as hex. */
    TableText device(int handle, String size, String form, String type, String rate, String locator) {
        return structure("11 1B %02X 11 00 10 FE FF 40 00 40 00 %s %s 00 01 00 %s 80 00 %s 00 00 00 02".formatted(
                handle, size, form, type, rate), locator, "PART-1");
    }

    TableText structure(String hex, String... strings) {
        for (String digits : hex.split(" ")) {
            bytes.write(Integer.parseInt(digits, 16));
        }
        for (String string : strings) {
            bytes.writeBytes(string.getBytes(StandardCharsets.ISO_8859_1));
            bytes.write(0);
        }
        bytes.write(0);
        if (strings.length == 0) {
            bytes.write(0);
        }
        return this;
    }

    byte[] bytes() {
        return bytes.toByteArray();
    }
}
