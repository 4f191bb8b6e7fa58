package slotledger.itest.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.itest.product.Product.Run;

class MatrixRunTest {

    private static final String DEMO = Path.of("../../demo-fleet").toAbsolutePath().normalize().toString();

    @TempDir
    static Path top;

    private static Product product;

    @BeforeAll
    static void copyTheProduct() throws IOException {
        product = Product.copyTo(top.resolve("product"));
    }

    @Test
    void theMatrixOfABoardIsPrintedAndWrittenOnce() throws Exception {
        Path file = top.resolve("s440.xlsx");
        Run first = product.run("matrix", DEMO, "--board", "dunmarsk-s440", "--out", file.toString());
        assertEquals(0, first.exitCode(), first.err());
        assertTrue(first.out().contains("Dunmarsk S440  (Harbour S440 Hardware Manual"), first.out());
        assertTrue(first.out().lines().allMatch(line -> line.length() <= 100 || line.contains("s440.xlsx")),
                first.out());
        assertTrue(Files.size(file) > 0);
        Run again = product.run("matrix", DEMO, "--board", "dunmarsk-s440", "--out", file.toString());
        assertEquals(73, again.exitCode(), again.err());
        assertTrue(again.err().contains("--force"), again.err());
    }

    @Test
    void aBoardThatIsNotThereNamesThoseThatAreNear() throws Exception {
        Run run = product.run("matrix", DEMO, "--board", "dunmarsk-s44");
        assertEquals(65, run.exitCode());
        assertTrue(run.err().contains("The nearest are dunmarsk-s440 (Dunmarsk S440)"), run.err());
    }

    @Test
    void aFileThatCantBeWrittenIsNamed() throws Exception {
        Path file = top.resolve("no such folder").resolve("m.xlsx");
        Run run = product.run("matrix", DEMO, "--board", "orvane-n250", "--module", "8GB PC3L-12800S", "--out",
                file.toString());
        assertEquals(74, run.exitCode());
        assertTrue(run.err().contains(file.toString()), run.err());
    }

    @Test
    void aMachineIsExplainedNumberByNumber() throws Exception {
        Run run = product.run("explain", DEMO, "--machine", "H-1165");
        assertEquals(0, run.exitCode(), run.err());
        for (String word : List.of("Slots", "Target", "Runs", "Channels", "Rate", "Memory", "Verdict", "Passes")) {
            assertTrue(run.out().lines().anyMatch(line -> line.startsWith(word)), run.out());
        }
        assertTrue(run.out().lines().allMatch(line -> line.length() <= 100), run.out());
    }
}
