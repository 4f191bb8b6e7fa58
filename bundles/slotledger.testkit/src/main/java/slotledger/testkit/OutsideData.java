package slotledger.testkit;

import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * The folder of data from outside, which tests read in place: {@code shared/outside} in the folder beside the
 * project or in any folder above it.
 *
 * <p>A test that asks for it where it is missing is skipped with a message. Where the system property
 * {@code slotledger.outside.required} or the environment variable {@code SLOTLEDGER_OUTSIDE_REQUIRED} is
 * {@code true} the test fails instead, so that a run that promises the outside checks can't leave them out.
 */
public final class OutsideData {

    private OutsideData() {
    }

    /** The folder; the calling test is skipped, or fails, where there is none. */
    public static Path folder() {
        return require("");
    }

    /**
     * A file or folder of the outside data; the calling test is skipped, or fails, where there is none.
     *
     * @param relative the path below the outside folder, with slashes, for example {@code tables/fill.csv}
     */
    public static Path file(String relative) {
        return require(relative);
    }

    private static Path require(String relative) {
        Path found = find(Path.of("").toAbsolutePath(), relative);
        String message = "The outside data (shared/outside/%s) is missing above %s"
                .formatted(relative, Path.of("").toAbsolutePath());
        if (found == null && required()) {
            Assertions.fail(message);
        }
        Assumptions.assumeTrue(found != null, message);
        return found;
    }

    static Path find(Path start, String relative) {
        for (Path folder = start; folder != null; folder = folder.getParent()) {
            Path candidate = folder.resolve("shared").resolve("outside").resolve(relative);
            if (Files.exists(candidate)) {
                return candidate;
            }
        }
        return null;
    }

    static boolean required() {
        return Boolean.getBoolean("slotledger.outside.required")
                || Boolean.parseBoolean(System.getenv("SLOTLEDGER_OUTSIDE_REQUIRED"));
    }
}
