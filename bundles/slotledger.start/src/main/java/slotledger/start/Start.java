package slotledger.start;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.eclipse.equinox.launcher.Main;

/**
 * Starts the product around the Equinox launcher.
 *
 * <p>The launcher and the framework take some arguments for themselves ({@code -clean}, {@code -debug} and more) and
 * would silently swallow a user's mistake. So each of the user's arguments travels behind a mark that no launcher
 * argument begins with, and the application takes the mark away.
 */
public final class Start {

    /** Stands before each argument that is the application's. */
    static final String MARK = "=";

    private Start() {
    }

    /** Never returns: the launcher ends the process with the application's exit code. */
    public static void main(String[] arguments) throws URISyntaxException {
        Path jar = Path.of(Start.class.getProtectionDomain().getCodeSource().getLocation().toURI());
        Path product = jar.getParent().getParent();
        System.getProperties().putIfAbsent("java.util.logging.config.file",
                product.resolve("configuration").resolve("logging.properties").toString());
        Path configuration = new ConfigurationArea(System.getProperties(), System.getenv()).choose(product);
        Main.main(launcherArguments(configuration, arguments).toArray(new String[0]));
    }

    static List<String> launcherArguments(Path configuration, String[] arguments) {
        List<String> all = new ArrayList<>(List.of("-configuration", configuration.toString()));
        for (String argument : arguments) {
            all.add(MARK + argument);
        }
        return all;
    }
}
