package slotledger.planner.internal;

import java.io.IOException;
import java.lang.reflect.Modifier;
import java.net.URISyntaxException;
import java.nio.file.FileSystem;
import java.nio.file.FileSystems;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import slotledger.rules.MemoryRules;
import slotledger.rules.spi.MemoryRule;
import slotledger.rules.standard.StandardRules;

/** The standard rules together with those of the bundle for SIMMs, as the product has them. */
final class EveryLaw {

    private static final String SIMM = "slotledger.simm.internal";

    private EveryLaw() {
    }

    static MemoryRules create() {
        List<MemoryRule> rules = new ArrayList<>(StandardRules.list());
        try {
            Path place = Path.of(Class.forName(SIMM + ".BanksWhole").getProtectionDomain().getCodeSource()
                    .getLocation().toURI());
            if (Files.isDirectory(place)) {
                add(place, rules);
            } else {
                try (FileSystem jar = FileSystems.newFileSystem(place)) {
                    add(jar.getPath("/"), rules);
                }
            }
        } catch (IOException | URISyntaxException | ReflectiveOperationException problem) {
            throw new IllegalStateException("The rules for SIMMs must be on the class path.", problem);
        }
        return StandardRules.of(rules);
    }

    private static void add(Path root, List<MemoryRule> rules) throws IOException, ReflectiveOperationException {
        try (Stream<Path> files = Files.list(root.resolve(SIMM.replace('.', '/')))) {
            for (Path file : files.sorted().toList()) {
                String name = file.getFileName().toString();
                if (name.endsWith(".class") && !name.contains("$")) {
                    Class<?> type = Class.forName(SIMM + "." + name.replace(".class", ""));
                    if (MemoryRule.class.isAssignableFrom(type) && !Modifier.isAbstract(type.getModifiers())) {
                        rules.add((MemoryRule) type.getConstructor().newInstance());
                    }
                }
            }
        }
    }
}
