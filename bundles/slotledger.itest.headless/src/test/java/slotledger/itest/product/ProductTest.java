package slotledger.itest.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.itest.product.Product.Run;

class ProductTest {

    @TempDir
    static Path top;

    private static Product product;

    @BeforeAll
    static void copyTheProduct() throws IOException {
        product = Product.copyTo(top.resolve("a folder with blanks"));
    }

    @Test
    void theVersionIsAllThatStandardOutputGets() throws Exception {
        assertEquals(new Run(0, "slotledger 1.0.0" + System.lineSeparator(), ""), product.run("--version"));
    }

    @Test
    void anArgumentWithBlanksArrivesAsOne() throws Exception {
        Run run = product.run("two  words");
        assertNotEquals(0, run.exitCode());
        assertTrue(run.err().contains("two  words"), run.err());
    }

    @Test
    void anArgumentThatTheFrameworkKnowsIsRefusedLikeAnyOther() throws Exception {
        Run run = product.run("-clean");
        assertNotEquals(0, run.exitCode());
        assertTrue(run.err().contains("-clean"), run.err());
    }

    @Test
    void aRunLeavesNoLogOfErrors() throws Exception {
        product.run("--version");
        try (Stream<Path> files = Files.list(product.folder().resolve("configuration"))) {
            assertEquals(List.of(), files.filter(file -> file.toString().endsWith(".log")).toList());
        }
    }
}
