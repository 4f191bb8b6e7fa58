package slotledger.cli.internal;

import java.util.Arrays;
import org.eclipse.equinox.app.IApplication;
import org.eclipse.equinox.app.IApplicationContext;
import org.osgi.framework.BundleContext;
import org.osgi.framework.FrameworkUtil;
import org.osgi.util.tracker.ServiceTracker;

/** The framework's door to the command line: hands the user's arguments to {@link Main} and its exit code back. */
public final class CommandLineApplication implements IApplication {

    /** The start program puts this before each of the user's arguments, see slotledger.start. */
    private static final String MARK = "=";

    /** Components are ready when the application starts; the time is for a machine that swaps. */
    private static final long PATIENCE_MS = 3_000;

    @Override
    public Object start(IApplicationContext context) throws InterruptedException {
        Object passed = context.getArguments().get(IApplicationContext.APPLICATION_ARGS);
        context.applicationRunning();
        BundleContext bundles = FrameworkUtil.getBundle(getClass()).getBundleContext();
        ServiceTracker<Main, Main> tracker = new ServiceTracker<>(bundles, Main.class, null);
        tracker.open();
        try {
            Main main = tracker.waitForService(PATIENCE_MS);
            if (main == null) {
                System.err.println(new MissingParts(bundles).describe());
                return Main.EXIT_BROKEN;
            }
            return main.run(userArguments((String[]) passed));
        } finally {
            tracker.close();
        }
    }

    static String[] userArguments(String[] passed) {
        return Arrays.stream(passed).filter(argument -> argument.startsWith(MARK))
                .map(argument -> argument.substring(MARK.length())).toArray(String[]::new);
    }

    @Override
    public void stop() {
        // A command ends by itself.
    }
}
