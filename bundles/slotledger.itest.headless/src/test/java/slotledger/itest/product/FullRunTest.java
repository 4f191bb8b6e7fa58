package slotledger.itest.product;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.itest.product.Product.Run;

/** The main job on the invented fleet, as a user runs it: from its spreadsheets to the plan, and the proof. */
class FullRunTest {

    private static final Path DEMO = Path.of("../../demo-fleet").toAbsolutePath().normalize();

    @TempDir
    static Path top;

    private static Product product;
    private static Path planned;
    private static Run planRun;

    @BeforeAll
    static void planTheDemoFleet() throws Exception {
        product = Product.copyTo(top.resolve("product"));
        planned = top.resolve("planned");
        planRun = plan(planned);
        assertEquals(0, planRun.exitCode(), planRun.err());
    }

    @Test
    void standardOutputHoldsOneJsonDocumentAndEveryFileItNames() throws IOException {
        ObjectMapper strict = new ObjectMapper().enable(DeserializationFeature.FAIL_ON_TRAILING_TOKENS);
        JsonNode answer = strict.readTree(planRun.out());
        assertFalse(answer.path("files").isEmpty(), planRun.out());
        for (JsonNode file : answer.path("files")) {
            assertTrue(Files.size(Path.of(file.asText())) > 0, file.asText());
        }
        assertTrue(Files.exists(planned.resolve("plan.json")));
    }

    @Test
    void theSameFilesGiveTheSamePlan() throws Exception {
        Path again = top.resolve("again");
        assertEquals(0, plan(again).exitCode());
        assertArrayEquals(Files.readAllBytes(planned.resolve("plan.json")),
                Files.readAllBytes(again.resolve("plan.json")));
    }

    @Test
    void anEarlierPlanIsNotReplacedWithoutAsking() throws Exception {
        Map<String, Long> before = files(planned);
        Run run = plan(planned);
        assertEquals(73, run.exitCode(), run.err());
        assertTrue(run.err().contains("--force"), run.err());
        assertEquals(before, files(planned));
    }

    @Test
    void anInventoryThatIsAsBeforeProvesNothingDone() throws Exception {
        Run run = product.run("prove", DEMO.toString(), "--plan", planned.resolve("plan.json").toString(), "--after",
                inventory().toString(), "--out", top.resolve("proof.xlsx").toString());
        assertEquals(1, run.exitCode(), run.err());
        assertTrue(Files.size(top.resolve("proof.xlsx")) > 0);
    }

    /** The list taken after the work belongs to the plan of today's planner, or almost nothing would be done in it. */
    @Test
    void theInventoryTakenAfterTheWorkProvesMostOfItAndNamesTheRest() throws Exception {
        Run run = product.run("prove", DEMO.toString(), "--plan", planned.resolve("plan.json").toString(), "--after",
                DEMO.resolve("after/inventory-after.csv").toString(), "--date", "2026-11-24", "--json");
        assertEquals(1, run.exitCode(), run.err());
        JsonNode outcomes = new ObjectMapper().readTree(run.out()).path("outcomes");
        assertTrue(outcomes.path("DONE").asInt() > 500, outcomes.toString());
        assertEquals(16, outcomes.path("NOT_DONE").asInt(), outcomes.toString());
        assertEquals(3, outcomes.path("DONE_DIFFERENTLY").asInt(), outcomes.toString());
        assertEquals(1, outcomes.path("WORSE").asInt(), outcomes.toString());
    }

    private static Run plan(Path out) throws IOException, InterruptedException {
        // A day on which the offers of the demo fleet hold.
        return product.run("plan", DEMO.toString(), "--out", out.toString(), "--date", "2026-11-24", "--json");
    }

    private static Path inventory() throws IOException {
        try (Stream<Path> files = Files.list(DEMO)) {
            return files.filter(file -> file.getFileName().toString().startsWith("fleet")).sorted().findFirst()
                    .orElseThrow();
        }
    }

    /** Name and time of every file, which tell whether one was written again. */
    private static Map<String, Long> files(Path folder) throws IOException {
        Map<String, Long> found = new TreeMap<>();
        try (Stream<Path> files = Files.walk(folder)) {
            for (Path file : files.filter(Files::isRegularFile).toList()) {
                found.put(folder.relativize(file).toString(), Files.getLastModifiedTime(file).toMillis());
            }
        }
        return found;
    }
}
