package slotledger.dropins.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Properties;
import java.util.TreeMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleContext;
import org.osgi.framework.BundleException;
import org.osgi.framework.Constants;
import org.osgi.framework.FrameworkListener;
import org.osgi.framework.startlevel.BundleStartLevel;
import org.osgi.framework.wiring.FrameworkWiring;

/**
 * Installs, updates and removes the jars of one folder. A jar's size and time of change, kept in the data area, tell
 * whether it is still the one that was installed.
 */
final class DropIns {

    private static final Logger LOG = Logger.getLogger(DropIns.class.getName());
    private static final String PREFIX = "dropin:";

    private final BundleContext context;
    private final Path folder;
    private final Path seenFile;

    DropIns(BundleContext context, Path folder) {
        this.context = context;
        this.folder = folder;
        this.seenFile = context.getDataFile("seen.properties").toPath();
    }

    void synchronise() throws IOException {
        Map<String, Path> jars = jars();
        Properties seen = readSeen();
        Properties now = new Properties();
        List<Bundle> changed = new ArrayList<>(removeMissing(jars.keySet()));
        List<Bundle> present = new ArrayList<>();
        for (Map.Entry<String, Path> jar : jars.entrySet()) {
            String location = jar.getKey();
            String mark = mark(jar.getValue());
            Bundle bundle = context.getBundle(location);
            try {
                if (bundle == null) {
                    bundle = install(location, jar.getValue());
                } else if (!mark.equals(seen.getProperty(location))) {
                    update(bundle, jar.getValue());
                    changed.add(bundle);
                }
                now.setProperty(location, mark);
                present.add(bundle);
            } catch (BundleException e) {
                complain(jar.getValue(), e);
            }
        }
        if (!now.equals(seen)) {
            writeSeen(now);
        }
        refresh(changed);
        present.forEach(this::start);
    }

    private Map<String, Path> jars() throws IOException {
        Map<String, Path> jars = new TreeMap<>();
        if (Files.isDirectory(folder)) {
            try (Stream<Path> files = Files.list(folder)) {
                files.filter(file -> file.getFileName().toString().endsWith(".jar"))
                        .forEach(file -> jars.put(PREFIX + file.getFileName(), file));
            }
        }
        return jars;
    }

    private List<Bundle> removeMissing(Collection<String> locations) {
        List<Bundle> removed = new ArrayList<>();
        for (Bundle bundle : context.getBundles()) {
            if (bundle.getLocation().startsWith(PREFIX) && !locations.contains(bundle.getLocation())) {
                try {
                    bundle.uninstall();
                    removed.add(bundle);
                } catch (BundleException e) {
                    complain(folder.resolve(bundle.getLocation().substring(PREFIX.length())), e);
                }
            }
        }
        return removed;
    }

    private Bundle install(String location, Path jar) throws IOException, BundleException {
        try (InputStream in = Files.newInputStream(jar)) {
            return context.installBundle(location, in);
        }
    }

    private static void update(Bundle bundle, Path jar) throws IOException, BundleException {
        try (InputStream in = Files.newInputStream(jar)) {
            bundle.update(in);
        }
    }

    private void refresh(Collection<Bundle> changed) {
        if (changed.isEmpty()) {
            return;
        }
        CountDownLatch done = new CountDownLatch(1);
        FrameworkListener refreshed = event -> done.countDown();
        context.getBundle(Constants.SYSTEM_BUNDLE_LOCATION).adapt(FrameworkWiring.class)
                .refreshBundles(changed, refreshed);
        try {
            if (!done.await(10, TimeUnit.SECONDS)) {
                LOG.warning("The drop-ins that were changed or removed may be seen until the next start.");
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private void start(Bundle bundle) {
        if (bundle.getHeaders("").get(Constants.FRAGMENT_HOST) != null) {
            return;
        }
        try {
            int level = context.getBundle().adapt(BundleStartLevel.class).getStartLevel();
            bundle.adapt(BundleStartLevel.class).setStartLevel(level);
            // Only for this run: the next one must not start a jar that is gone by then.
            bundle.start(Bundle.START_TRANSIENT | Bundle.START_ACTIVATION_POLICY);
        } catch (BundleException e) {
            complain(folder.resolve(bundle.getLocation().substring(PREFIX.length())), e);
        }
    }

    private static void complain(Path jar, BundleException e) {
        String why = e.getCause() == null ? e.getMessage() : e.getMessage() + " " + e.getCause().getMessage();
        LOG.log(Level.WARNING, "The drop-in {0} can''t be used: {1}", new Object[] {jar, why});
    }

    private static String mark(Path jar) throws IOException {
        return Files.size(jar) + " bytes of " + Files.getLastModifiedTime(jar);
    }

    private Properties readSeen() throws IOException {
        Properties seen = new Properties();
        if (Files.exists(seenFile)) {
            try (InputStream in = Files.newInputStream(seenFile)) {
                seen.load(in);
            }
        }
        return seen;
    }

    private void writeSeen(Properties seen) throws IOException {
        try (OutputStream out = Files.newOutputStream(seenFile)) {
            seen.store(out, null);
        }
    }
}
