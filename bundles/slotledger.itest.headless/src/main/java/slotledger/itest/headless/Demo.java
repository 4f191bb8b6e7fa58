package slotledger.itest.headless;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.stream.Stream;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Project;

/** The desk of the framework under test, and projects on a day on which the offers of the demo fleet hold. */
final class Demo {

    private static final LocalDate DAY = LocalDate.of(2026, 11, 24);

    private Demo() {
    }

    static FleetDesk desk() {
        BundleContext context = FrameworkUtil.getBundle(Demo.class).getBundleContext();
        return context.getService(context.getServiceReference(FleetDesk.class));
    }

    static Path folder() {
        return Path.of(FrameworkUtil.getBundle(Demo.class).getBundleContext().getProperty("demo.fleet"));
    }

    /** The demo fleet's evening college alone, in a new folder: planned in a moment. */
    static Path evening(Path folder) throws IOException {
        try (Stream<Path> files = Files.walk(folder())) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                String name = folder().relativize(file).toString();
                if (name.startsWith("boards") || name.matches("(fleet-night-college|offers|shelf|policy).*")) {
                    Path copy = folder.resolve(name);
                    Files.createDirectories(copy.getParent());
                    Files.copy(file, copy);
                }
            }
        }
        return folder;
    }

    static Project open(Path folder) throws DeskException {
        Project today = desk().open(folder);
        return new Project(today.title(), today.inventories(), today.mapping(), today.boards(), today.offers(),
                today.shelves(), today.policy(), today.choices(), DAY, today.stored());
    }
}
