package slotledger.model.family;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Reads the file of families: blocks of "key: value | source" lines; a line that ends in a backslash goes on. */
final class FamilyFile {

    private FamilyFile() {
    }

    /** A file that can't be read is a mistake in the product. */
    static List<Family> read(String name) {
        try (InputStream stream = FamilyFile.class.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("The file %s must stand beside %s.".formatted(name,
                        FamilyFile.class.getName()));
            }
            return read(new InputStreamReader(stream, StandardCharsets.UTF_8));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static List<Family> read(Reader text) throws IOException {
        List<Family> families = new ArrayList<>();
        BufferedReader lines = new BufferedReader(text);
        Map<String, String> block = new LinkedHashMap<>();
        StringBuilder whole = new StringBuilder();
        int number = 0;
        for (String line = lines.readLine(); line != null; line = lines.readLine()) {
            number++;
            if (line.startsWith("#")) {
                continue;
            }
            whole.append(whole.isEmpty() ? "" : " ").append(line.strip());
            if (line.endsWith("\\")) {
                whole.setLength(whole.length() - 1);
                whole.setLength(whole.toString().stripTrailing().length());
                continue;
            }
            add(whole.toString(), number, block, families);
            whole.setLength(0);
        }
        add("", number, block, families);
        return List.copyOf(families);
    }

    private static void add(String line, int number, Map<String, String> block, List<Family> families) {
        if (line.isEmpty()) {
            if (!block.isEmpty()) {
                families.add(new FamilyBlock(block, number).family());
                block.clear();
            }
            return;
        }
        int colon = line.indexOf(':');
        if (colon < 1 || block.put(line.substring(0, colon).strip(), line.substring(colon + 1).strip()) != null) {
            throw new IllegalStateException("Line %d of the families must be \"key: value\", each key once a block."
                    .formatted(number));
        }
    }
}
