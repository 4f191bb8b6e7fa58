package slotledger.lib.solver.internal;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/**
 * The native libraries of one platform: file name to where its bytes are.
 *
 * @param files by file name
 */
public record NativeLibraries(Map<String, URL> files) {

    private static final String ENTRY = "jniortools";

    public NativeLibraries {
        files = new TreeMap<>(files);
        if (!files.containsKey(System.mapLibraryName(ENTRY))) {
            throw new IllegalArgumentException("The native libraries (%s) must contain %s."
                    .formatted(files.keySet(), System.mapLibraryName(ENTRY)));
        }
    }

    /**
     * Writes the files that the folder doesn't hold yet. Each appears whole or not at all, so that two processes may
     * do this at the same time.
     */
    public void unpackInto(Path folder) throws IOException {
        Files.createDirectories(folder);
        for (Map.Entry<String, URL> file : files.entrySet()) {
            Path target = folder.resolve(file.getKey());
            long length = file.getValue().openConnection().getContentLengthLong();
            if (!Files.exists(target) || Files.size(target) != length) {
                unpack(file.getValue(), target);
            }
        }
    }

    private static void unpack(URL source, Path target) throws IOException {
        Path part = Files.createTempFile(target.getParent(), target.getFileName().toString(), ".part");
        try {
            try (InputStream in = source.openStream()) {
                Files.copy(in, part, StandardCopyOption.REPLACE_EXISTING);
            }
            Files.move(part, target, StandardCopyOption.ATOMIC_MOVE);
        } finally {
            Files.deleteIfExists(part);
        }
    }

    /**
     * Loads the entry library. Linux and macOS find the others beside it; Windows only finds those that are loaded
     * already, in whatever order their dependencies allow.
     */
    public void load(Path folder) {
        if (System.mapLibraryName("x").endsWith(".dll")) {
            loadAllBut(folder, System.mapLibraryName(ENTRY));
        }
        System.load(folder.resolve(System.mapLibraryName(ENTRY)).toString());
    }

    private void loadAllBut(Path folder, String last) {
        List<String> waiting = new ArrayList<>(files.keySet());
        waiting.remove(last);
        boolean progress = true;
        while (progress) {
            progress = waiting.removeIf(name -> canLoad(folder.resolve(name)));
        }
    }

    private static boolean canLoad(Path library) {
        try {
            System.load(library.toString());
            return true;
        } catch (UnsatisfiedLinkError e) {
            return false;
        }
    }
}
