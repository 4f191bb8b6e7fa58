package slotledger.checks;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** A file that DEVELOPERS.md prints is in the build as it is printed, so that it can't go stale. */
class GuideTest {

    /** The path of a file on a line of its own, and the block below it. */
    private static final Pattern PRINTED =
            Pattern.compile("(?m)^`(bundles/[^`]+)`:\\R\\R```\\w+\\R(?s:(.*?))^```$");

    @Test
    void everyFileThatTheGuidePrintsIsThatFile() {
        String guide = Project.read(Project.top().resolve("DEVELOPERS.md"));
        assertEquals(List.of("bundles/slotledger.example/pom.xml",
                "bundles/slotledger.example/src/main/java/slotledger/example/FreeSocket.java",
                "bundles/slotledger.example/src/test/java/slotledger/example/FreeSocketTest.java"),
                PRINTED.matcher(guide).results().map(printed -> printed.group(1)).toList());
        assertEquals(List.of(), stale(guide));
    }

    @Test
    void aStaleOrMissingFileIsFound() {
        assertEquals(List.of("bundles/pom.xml", "bundles/none.txt"), stale("""
                Two files:

                `bundles/pom.xml`:

                ```xml
                <project/>
                ```

                `bundles/none.txt`:

                ```text
                none
                ```
                """));
    }

    private static List<String> stale(String guide) {
        List<String> stale = new ArrayList<>();
        for (MatchResult printed : PRINTED.matcher(guide).results().toList()) {
            Path file = Project.top().resolve(printed.group(1));
            if (!Files.exists(file) || !Project.read(file).equals(printed.group(2))) {
                stale.add(printed.group(1));
            }
        }
        return stale;
    }
}
