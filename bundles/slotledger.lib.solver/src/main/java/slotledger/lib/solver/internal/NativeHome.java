package slotledger.lib.solver.internal;

import java.io.File;
import java.io.IOException;
import java.net.JarURLConnection;
import java.net.URL;
import java.net.URLConnection;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Where the native libraries come from and where they are unpacked: inside a framework, or on a plain class path. */
public final class NativeHome {

    /** Finds the files of a folder among the resources. */
    interface Finder {
        Map<String, URL> find(String folder) throws IOException;
    }

    private static Finder finder = NativeHome::findOnClassPath;
    private static Path dataArea;

    private NativeHome() {
    }

    static synchronized void useFramework(Finder bundleFinder, Path bundleDataArea) {
        finder = bundleFinder;
        dataArea = bundleDataArea;
    }

    public static synchronized NativeLibraries find(String folder) throws IOException {
        Map<String, URL> files = finder.find(folder);
        if (files.isEmpty()) {
            throw new IOException("there is no " + folder);
        }
        return new NativeLibraries(files);
    }

    public static synchronized Path folder() throws IOException {
        if (dataArea == null) {
            Path temporary = Files.createTempDirectory("slotledger-solver");
            Runtime.getRuntime().addShutdownHook(new Thread(() -> delete(temporary)));
            dataArea = temporary;
        }
        return dataArea;
    }

    private static Map<String, URL> findOnClassPath(String folder) throws IOException {
        URL entry = NativeHome.class.getClassLoader()
                .getResource(folder + "/" + System.mapLibraryName("jniortools"));
        Map<String, URL> found = new HashMap<>();
        if (entry == null) {
            return found;
        }
        URLConnection connection = entry.openConnection();
        if (!(connection instanceof JarURLConnection jar)) {
            throw new IOException(entry + " is not in a jar");
        }
        List<String> names = jar.getJarFile().stream().map(e -> e.getName())
                .filter(name -> name.startsWith(folder + "/") && !name.endsWith("/")).toList();
        for (String name : names) {
            found.put(name.substring(folder.length() + 1), NativeHome.class.getClassLoader().getResource(name));
        }
        return found;
    }

    private static void delete(Path folder) {
        try (Stream<Path> files = Files.walk(folder)) {
            files.sorted(Comparator.reverseOrder()).map(Path::toFile).forEach(File::delete);
        } catch (IOException e) {
            // What is left lies in the folder for temporary files.
        }
    }
}
