package slotledger.start;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.Properties;
import java.util.UUID;

/**
 * Where the framework keeps what it remembers between starts: the product's own folder, or, where that can't be
 * written, a folder among the user's caches, one for each place a product is installed at.
 */
final class ConfigurationArea {

    private final Map<String, String> system = new HashMap<>();
    private final Map<String, String> environment;

    ConfigurationArea(Properties system, Map<String, String> environment) {
        system.stringPropertyNames().forEach(name -> this.system.put(name, system.getProperty(name)));
        this.environment = Map.copyOf(environment);
    }

    Path choose(Path product) {
        Path own = product.resolve("configuration");
        if (canWrite(own)) {
            return own;
        }
        // The same product always gets the same folder; a name-based UUID is a ready-made hash.
        String key = UUID.nameUUIDFromBytes(product.toString().getBytes(StandardCharsets.UTF_8)).toString();
        Path cached = caches().resolve("slotledger").resolve(key);
        if (canWrite(cached)) {
            return cached;
        }
        try {
            return Files.createTempDirectory("slotledger");
        } catch (IOException e) {
            throw new UncheckedIOException(
                    "Neither %s nor %s nor the folder for temporary files can be written.".formatted(own, cached), e);
        }
    }

    private Path caches() {
        Path home = Path.of(system.get("user.home"));
        String os = system.get("os.name").toLowerCase(Locale.ROOT);
        if (os.startsWith("windows")) {
            return given("LOCALAPPDATA", home.resolve("AppData").resolve("Local"));
        }
        if (os.startsWith("mac")) {
            return home.resolve("Library").resolve("Caches");
        }
        return given("XDG_CACHE_HOME", home.resolve(".cache"));
    }

    private Path given(String variable, Path otherwise) {
        String value = environment.getOrDefault(variable, "");
        return value.isBlank() ? otherwise : Path.of(value);
    }

    /** Asks by trying: permission bits don't tell of a file system that is mounted for reading only. */
    private static boolean canWrite(Path folder) {
        try {
            Files.createDirectories(folder);
            Files.delete(Files.createTempFile(folder, "write", ".test"));
            return true;
        } catch (IOException e) {
            return false;
        }
    }
}
