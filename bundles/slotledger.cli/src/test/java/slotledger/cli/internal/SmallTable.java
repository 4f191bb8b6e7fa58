package slotledger.cli.internal;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;

/** An invented SMBIOS table with one array, a full slot and an empty one. */
final class SmallTable {

    private SmallTable() {
    }

    static byte[] bytes(int most) {
        ByteArrayOutputStream table = new ByteArrayOutputStream();
        structure(table, "10 0F 00 10 03 03 03 00 00 00 02 FE FF 02 00");
        structure(table, "11 1B 00 11 00 10 FE FF 40 00 40 00 00 20 09 00 01 00 1A 80 00 60 09 00 00 00 02",
                "DIMM A", "PART-8");
        structure(table, "11 1B 01 11 00 10 FE FF 40 00 40 00 00 00 09 00 01 00 1A 80 00 00 00 00 00 00 00",
                "DIMM B");
        structure(table, "7F 04 FF FE");
        byte[] all = table.toByteArray();
        return Arrays.copyOf(all, Math.min(most, all.length));
    }

    private static void structure(ByteArrayOutputStream table, String hex, String... strings) {
        for (String digits : hex.split(" ")) {
            table.write(Integer.parseInt(digits, 16));
        }
        for (String string : strings) {
            table.writeBytes(string.getBytes(StandardCharsets.US_ASCII));
            table.write(0);
        }
        table.write(0);
        if (strings.length == 0) {
            table.write(0);
        }
    }
}
