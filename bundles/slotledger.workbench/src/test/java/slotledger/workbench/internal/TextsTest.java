package slotledger.workbench.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;

import java.io.IOException;
import java.io.InputStream;
import java.io.InputStreamReader;
import java.io.Reader;
import java.lang.reflect.Field;
import java.lang.reflect.Modifier;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Properties;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

class TextsTest {

    @Test
    void everyTextHasItsFieldAndEveryFieldItsText() throws IOException {
        Set<String> fields = Arrays.stream(Texts.class.getDeclaredFields())
                .filter(field -> Modifier.isPublic(field.getModifiers())).map(Field::getName)
                .collect(Collectors.toCollection(TreeSet::new));
        try (InputStream file = Texts.class.getResourceAsStream("texts.properties")) {
            assertNotNull(file);
            assertEquals(fields, keys(new InputStreamReader(file, StandardCharsets.UTF_8)));
        }
    }

    @Test
    void everyKeyOfThePluginHasItsText() throws IOException {
        Matcher used = Pattern.compile("\"%([\\w.]+)\"").matcher(Files.readString(Path.of("plugin.xml")));
        Set<String> keys = used.results().map(found -> found.group(1)).collect(Collectors.toCollection(TreeSet::new));
        try (Reader file = Files.newBufferedReader(Path.of("plugin.properties"))) {
            assertEquals(keys, keys(file));
        }
    }

    @Test
    void aTextTakesItsValues() {
        assertEquals("to PC-7, slot B1", Texts.with(Texts.way_to, Texts.with(Texts.way_machine, "PC-7", "B1")));
    }

    private static Set<String> keys(Reader file) throws IOException {
        Properties texts = new Properties();
        texts.load(file);
        return new TreeSet<>(texts.stringPropertyNames());
    }
}
