package slotledger.app.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;

/** Writes the scripts that collect firmware tables. */
final class KitFiles {

    /** Resource to file, in the order of reading. */
    private static final Map<String, String> FILES = new LinkedHashMap<>();

    static {
        FILES.put("kit-readme.txt", "README.txt");
        FILES.put("collect-linux.sh", "collect-linux.sh");
        FILES.put("collect-windows.ps1", "collect-windows.ps1");
    }

    private KitFiles() {
    }

    static List<Path> write(Path folder, boolean force) throws DeskException {
        try (OutputFolder output = OutputFolder.prepare(folder, force)) {
            List<Path> made = new ArrayList<>();
            for (Map.Entry<String, String> file : FILES.entrySet()) {
                Path path = output.work().resolve(file.getValue());
                try (InputStream content = KitFiles.class.getResourceAsStream(file.getKey())) {
                    if (content == null) {
                        throw new IllegalStateException("The resource %s must be in the bundle."
                                .formatted(file.getKey()));
                    }
                    Files.write(path, content.readAllBytes());
                }
                made.add(path);
            }
            return output.publish(made);
        } catch (IOException problem) {
            throw new DeskException(Trouble.OUTPUT, problem.getMessage(), problem);
        }
    }
}
