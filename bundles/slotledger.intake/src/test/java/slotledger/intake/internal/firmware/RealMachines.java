package slotledger.intake.internal.firmware;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.BufferedReader;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Map;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;
import slotledger.testkit.OutsideData;

/**
 * The memory structures of 40,779 real computers, a quarter of linuxhw/DMI @57b21bc6 (linux-hardware.org, CC-BY-4.0),
 * one JSON object a line; turned back into the listings they were taken from.
 */
final class RealMachines {

    /** Takes machines. */
    interface Taker {
        void take(String path, String listing, JsonNode line);
    }

    private static final Path FILE = Path.of("linuxhw", "memory-structures-sample.jsonl.xz");

    private RealMachines() {
    }

    /** Skips, or fails, the calling test where the data or the program xz is missing. */
    static int each(Taker taker) throws IOException, InterruptedException {
        Path packed = OutsideData.file(FILE.toString());
        Process unpack = start(packed);
        ObjectMapper json = new ObjectMapper();
        int count = 0;
        try (BufferedReader lines = unpack.inputReader(StandardCharsets.UTF_8)) {
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                JsonNode node = json.readTree(line);
                taker.take(node.get("path").asText(), listing(node), node);
                count++;
            }
        }
        Assertions.assertTrue(unpack.waitFor(1, TimeUnit.MINUTES), "xz must end");
        Assertions.assertEquals(0, unpack.exitValue(), "xz must unpack the whole file");
        return count;
    }

    private static Process start(Path packed) {
        try {
            return new ProcessBuilder("xz", "-dc", packed.toString()).redirectError(ProcessBuilder.Redirect.DISCARD)
                    .start();
        } catch (IOException missing) {
            String message = "The program xz is missing, which unpacks " + packed;
            if (Boolean.parseBoolean(System.getenv("SLOTLEDGER_OUTSIDE_REQUIRED"))) {
                Assertions.fail(message);
            }
            Assumptions.abort(message);
            throw new IllegalStateException(missing);
        }
    }

    private static String listing(JsonNode machine) {
        StringBuilder text = new StringBuilder("# dmidecode 3.3\nSMBIOS %s present.\n\n"
                .formatted(machine.path("smbios").asText()));
        names(text, 1, "System Information", machine.path("sys"));
        names(text, 2, "Base Board Information", machine.path("board"));
        machine.path("arrays").forEach(array -> structure(text, 16, "Physical Memory Array", array));
        machine.path("devs").forEach(device -> structure(text, 17, "Memory Device", device));
        return text.toString();
    }

    private static void names(StringBuilder text, int type, String title, JsonNode names) {
        if (names.isArray()) {
            text.append("Handle 0x%04X, DMI type %d, 27 bytes\n%s\n".formatted(0xF000 + type, type, title));
            String[] keys = {"Manufacturer", "Product Name", "Version"};
            for (int i = 0; i < Math.min(keys.length, names.size()); i++) {
                text.append("\t%s: %s\n".formatted(keys[i], names.get(i).asText()));
            }
            text.append('\n');
        }
    }

    private static void structure(StringBuilder text, int type, String title, JsonNode fields) {
        text.append("Handle %s, DMI type %d, %d bytes\n%s\n".formatted(fields.path("_h").asText(), type,
                fields.path("_len").asInt(), title));
        for (Map.Entry<String, JsonNode> field : fields.properties()) {
            if (!field.getKey().startsWith("_")) {
                text.append("\t%s: %s\n".formatted(field.getKey(), field.getValue().asText()));
            }
        }
        text.append('\n');
    }
}
