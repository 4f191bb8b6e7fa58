package slotledger.lib.solver;

import java.io.IOException;
import java.nio.file.Path;
import slotledger.lib.solver.internal.NativeHome;
import slotledger.lib.solver.internal.NativeLibraries;
import slotledger.lib.solver.internal.Platform;

/**
 * The solver's native code. Everyone who calls a class of {@code com.google.ortools} calls {@link #load()} first;
 * after the first time that costs nothing.
 *
 * <p>The library's own loader reads a jar through the file system, which a framework's bundles don't offer, and
 * unpacks 70 MB at every start. Here the files are unpacked once into the bundle's data area, or, outside a
 * framework, into a folder for temporary files that goes away with the process.
 */
public final class NativeSolver {

    private static Path folder;

    private NativeSolver() {
    }

    /**
     * Loads the native code once per process.
     *
     * @return the folder that holds the unpacked native libraries
     * @throws NativeSolverException where the product holds no native code for this platform, or it can't be
     *         unpacked or loaded
     */
    public static synchronized Path load() throws NativeSolverException {
        if (folder == null) {
            folder = unpackAndLoad();
        }
        return folder;
    }

    private static Path unpackAndLoad() throws NativeSolverException {
        String platform = Platform.name(System.getProperty("os.name"), System.getProperty("os.arch"));
        try {
            NativeLibraries libraries = NativeHome.find("ortools-" + platform);
            Path target = NativeHome.folder().resolve(platform);
            libraries.unpackInto(target);
            libraries.load(target);
            return target;
        } catch (IOException | UnsatisfiedLinkError e) {
            throw new NativeSolverException(
                    "The solver's native code for %s can't be used: %s. Maybe this is the product of another platform."
                            .formatted(platform, e.getMessage()),
                    e);
        }
    }
}
