package slotledger.intake.internal.value;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** Our word lists: "[section]" lines, then "language: word" lines; "#" begins a comment line. */
public final class SectionFile {

    private SectionFile() {
    }

    /** Words by section, both in file order. A list that can't be read is a mistake in the product. */
    public static Map<String, List<String>> read(Class<?> beside, String name) {
        Map<String, List<String>> sections = new LinkedHashMap<>();
        List<String> section = null;
        int number = 0;
        try (InputStream stream = beside.getResourceAsStream(name)) {
            if (stream == null) {
                throw new IllegalStateException("The list %s must stand beside %s.".formatted(name, beside.getName()));
            }
            BufferedReader lines = new BufferedReader(new InputStreamReader(stream, StandardCharsets.UTF_8));
            for (String line = lines.readLine(); line != null; line = lines.readLine()) {
                number++;
                if (line.isBlank() || line.startsWith("#")) {
                    continue;
                }
                if (line.startsWith("[") && line.strip().endsWith("]")) {
                    section = sections.computeIfAbsent(line.strip().substring(1, line.strip().length() - 1),
                            key -> new ArrayList<>());
                } else if (section == null || line.indexOf(':') < 1 || line.indexOf(':') == line.length() - 1) {
                    throw new IllegalStateException("Line %d of %s must be \"language: word\" in a section."
                            .formatted(number, name));
                } else {
                    section.add(line.substring(line.indexOf(':') + 1).strip());
                }
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
        return sections;
    }
}
