package slotledger.start;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class StartTest {

    @TempDir
    Path top;

    @Test
    void noArgumentOfTheUserLooksLikeOneOfTheLauncher() {
        assertEquals(List.of("-configuration", top.toString(), "=-clean", "=two words", "="),
                Start.launcherArguments(top, new String[] {"-clean", "two words", ""}));
    }

    @Test
    void aProductThatCanBeWrittenKeepsItsOwnConfiguration() {
        assertEquals(top.resolve("configuration"), area("Linux", Map.of()).choose(top));
    }

    @Test
    void aProductThatCannotBeWrittenUsesTheUsersCaches() throws IOException {
        Path product = readOnly("product");
        Path home = top.resolve("home");
        assertEquals(home.resolve(".cache/slotledger"), area("Linux", Map.of()).choose(product).getParent());
        assertEquals(top.resolve("x/slotledger"),
                area("Linux", Map.of("XDG_CACHE_HOME", top.resolve("x").toString())).choose(product).getParent());
        assertEquals(home.resolve("Library/Caches/slotledger"), area("Mac OS X", Map.of()).choose(product).getParent());
        assertEquals(top.resolve("local/slotledger"),
                area("Windows 11", Map.of("LOCALAPPDATA", top.resolve("local").toString())).choose(product)
                        .getParent());
    }

    @Test
    void twoProductsDoNotShareAConfiguration() throws IOException {
        assertNotEquals(area("Linux", Map.of()).choose(readOnly("one")),
                area("Linux", Map.of()).choose(readOnly("two")));
    }

    private ConfigurationArea area(String os, Map<String, String> environment) {
        Properties system = new Properties();
        system.setProperty("os.name", os);
        system.setProperty("user.home", top.resolve("home").toString());
        return new ConfigurationArea(system, environment);
    }

    /** A file where the folder should be: that stops even an administrator, whom permission bits don't. */
    private Path readOnly(String name) throws IOException {
        Path product = Files.createDirectories(top.resolve(name));
        Files.createFile(product.resolve("configuration"));
        return product;
    }
}
