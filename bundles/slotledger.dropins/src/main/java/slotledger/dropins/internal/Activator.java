package slotledger.dropins.internal;

import java.io.IOException;
import java.net.URI;
import java.nio.file.Path;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/**
 * Brings the framework in line with the product's folder {@code dropins} before the other bundles start, so that even
 * a short command sees exactly the jars that lie there. {@code slotledger.dropins} names another folder.
 */
public final class Activator implements BundleActivator {

    @Override
    public void start(BundleContext context) throws IOException {
        Path folder = folder(context);
        if (folder != null) {
            new DropIns(context, folder).synchronise();
        }
    }

    private static Path folder(BundleContext context) {
        String named = context.getProperty("slotledger.dropins");
        if (named != null) {
            return Path.of(named);
        }
        String install = context.getProperty("osgi.install.area");
        // The framework gives the folder as a URL in which a blank may stand as itself.
        return install == null ? null : Path.of(URI.create(install.replace(" ", "%20"))).resolve("dropins");
    }

    @Override
    public void stop(BundleContext context) {
        // What is installed stays for the next start.
    }
}
