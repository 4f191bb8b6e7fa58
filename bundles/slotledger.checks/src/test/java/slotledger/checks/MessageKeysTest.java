package slotledger.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.Reader;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class MessageKeysTest {

    private static final Pattern KEY = Pattern.compile("\"%([\\w.-]+)\"");

    @Test
    void everyKeyOfAPluginOrAnApplicationModelHasItsText() throws IOException {
        Set<String> violations = new TreeSet<>();
        for (Path bundle : Project.bundles()) {
            violations.addAll(missing(bundle));
        }
        assertEquals(Set.of(), violations);
    }

    @Test
    void aKeyWithoutTextIsFound(@TempDir Path bundle) throws IOException {
        Files.writeString(bundle.resolve("plugin.xml"), "<view name=\"%fleet\" tip=\"%fleet.tip\" share=\"50%\"/>");
        Files.writeString(bundle.resolve("plugin.properties"), "fleet=Fleet\n");
        assertEquals(Set.of(bundle.getFileName() + ": %fleet.tip in plugin.xml"), missing(bundle));
    }

    private static Set<String> missing(Path bundle) throws IOException {
        List<Path> files = Project.filesBelow(bundle);
        Properties texts = new Properties();
        for (Path file : files) {
            if (file.toString().endsWith(".properties")) {
                try (Reader reader = Files.newBufferedReader(file)) {
                    texts.load(reader);
                }
            }
        }
        Set<String> found = new TreeSet<>();
        for (Path file : files) {
            String name = file.getFileName().toString();
            if (name.equals("plugin.xml") || name.equals("fragment.xml") || name.endsWith(".e4xmi")) {
                Matcher key = KEY.matcher(Project.read(file));
                while (key.find()) {
                    if (texts.getProperty(key.group(1), "").isBlank()) {
                        found.add("%s: %%%s in %s".formatted(bundle.getFileName(), key.group(1), name));
                    }
                }
            }
        }
        return found;
    }
}
