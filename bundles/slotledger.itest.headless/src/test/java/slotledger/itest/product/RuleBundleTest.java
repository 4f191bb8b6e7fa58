package slotledger.itest.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.itest.product.Product.Run;

/** Rules that come in a bundle of their own: there, taken away, and dropped in. */
class RuleBundleTest {

    private static final String PROJECT = Path.of("src/test/resources/old-machines").toAbsolutePath().toString();
    private static final String HALF_A_BANK = "Bank 0 holds 1 module in 2 sockets (1, 2)";
    private static final String NO_RULES = "There are no rules for this family (FPM).";

    @TempDir
    Path top;

    private Product product;
    private Path simm;

    @BeforeEach
    void copyTheProduct() throws IOException {
        product = Product.copyTo(top.resolve("product"));
        simm = product.folder().resolve("plugins/slotledger.simm.jar");
    }

    @Test
    void aSimmBoardIsJudgedByTheBundleThatComesWithTheProduct() throws Exception {
        String text = explain("S-2");
        assertTrue(text.contains(HALF_A_BANK), text);
        assertFalse(text.contains(NO_RULES), text);
    }

    @Test
    void withoutItsJarTheBoardHasNoRulesAndAllElseIsAsBefore() throws Exception {
        JsonNode before = plan("before");
        assertEquals(2, machine(before, "S-1").path("moves").size(), "a bank of 2 modules of 16 MB is bought");
        String modern = explain("D-1");
        Files.delete(simm);
        String text = explain("S-2");
        assertTrue(text.contains(NO_RULES) && text.contains("Install the bundle with the rules of this family."), text);
        assertFalse(text.contains(HALF_A_BANK), text);
        assertEquals(modern, explain("D-1"));
        Run check = product.run("check", PROJECT);
        assertEquals(0, check.exitCode(), check.err());
        JsonNode after = plan("after");
        assertFalse(machine(before, "D-1").path("moves").isEmpty());
        assertEquals(machine(before, "D-1").path("moves"), machine(after, "D-1").path("moves"));
        assertEquals(machine(before, "D-1").path("after"), machine(after, "D-1").path("after"));
        assertEquals(0, machine(after, "S-1").path("moves").size(), "nothing is planned for a board without rules");
    }

    @Test
    void droppedInItJudgesAgain() throws Exception {
        Path dropIn = product.folder().resolve("dropins/slotledger.simm.jar");
        Files.move(simm, dropIn);
        assertTrue(explain("S-2").contains(HALF_A_BANK));
        assertEquals(2, machine(plan("dropped"), "S-1").path("moves").size());
        Files.delete(dropIn);
        assertTrue(explain("S-2").contains(NO_RULES));
    }

    @Test
    void theRuleThatTheGuidePrintsWorksAsADropIn() throws Exception {
        assertFalse(explain("D-1").contains("free-socket"));
        Files.copy(Path.of(System.getProperty("example")), product.folder().resolve("dropins/example.jar"));
        String text = explain("D-1");
        assertTrue(text.contains("free-socket  It can grow, or is as large as it gets."), text);
    }

    private String explain(String tag) throws IOException, InterruptedException {
        Run run = product.run("explain", PROJECT, "--machine", tag);
        assertTrue(run.exitCode() <= 1, () -> "it tells what is wrong, and nothing worse: " + run.err());
        return run.out();
    }

    private JsonNode plan(String name) throws IOException, InterruptedException {
        Path out = top.resolve(name);
        Run run = product.run("plan", PROJECT, "--out", out.toString(), "--date", "2026-11-24");
        assertEquals(0, run.exitCode(), run.err());
        return new ObjectMapper().readTree(out.resolve("plan.json").toFile()).path("plan");
    }

    private static JsonNode machine(JsonNode plan, String tag) {
        for (JsonNode machine : plan.path("machines")) {
            if (machine.path("machine").path("tag").asText().equals(tag)) {
                return machine;
            }
        }
        throw new IllegalStateException("The plan must name %s: %s".formatted(tag, plan.path("machines")));
    }
}
