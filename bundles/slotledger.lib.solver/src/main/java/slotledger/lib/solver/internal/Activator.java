package slotledger.lib.solver.internal;

import java.net.URL;
import java.util.Collections;
import java.util.Enumeration;
import java.util.HashMap;
import java.util.Map;
import org.osgi.framework.Bundle;
import org.osgi.framework.BundleActivator;
import org.osgi.framework.BundleContext;

/** Tells {@link NativeHome} of the bundle it lives in, before any other class of the bundle is loaded. */
public final class Activator implements BundleActivator {

    @Override
    public void start(BundleContext context) {
        NativeHome.useFramework(folder -> find(context.getBundle(), folder), context.getDataFile("native").toPath());
    }

    private static Map<String, URL> find(Bundle bundle, String folder) {
        Map<String, URL> found = new HashMap<>();
        Enumeration<URL> entries = bundle.findEntries("/" + folder, "*", false);
        for (URL url : Collections.list(entries == null ? Collections.emptyEnumeration() : entries)) {
            found.put(url.getPath().substring(url.getPath().lastIndexOf('/') + 1), url);
        }
        return found;
    }

    @Override
    public void stop(BundleContext context) {
        // A native library stays loaded as long as its class loader lives.
    }
}
