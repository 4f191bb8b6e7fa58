package slotledger.itest.product;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.jar.Attributes;
import java.util.jar.JarOutputStream;
import java.util.jar.Manifest;
import java.util.zip.ZipEntry;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.itest.product.Product.Run;

class DropInTest {

    @TempDir
    Path top;

    private Product product;

    @BeforeEach
    void copyTheProduct() throws IOException {
        product = Product.copyTo(top.resolve("product"));
    }

    @Test
    void aDropInIsActiveUntilItsJarIsReplacedOrRemoved() throws Exception {
        Path jar = product.folder().resolve("dropins/greeter.jar");
        writeBundle(jar, "first");
        assertTrue(output().contains("greeter first is active"));
        assertTrue(output().contains("greeter first is active"), "also at the second start");
        writeBundle(jar, "second");
        assertTrue(output().contains("greeter second is active"));
        Files.delete(jar);
        assertFalse(output().contains("greeter"));
    }

    @Test
    void aDropInThatNeedsWhatIsNotThereIsNamedAndTheCommandStillRuns() throws Exception {
        writeBundle(product.folder().resolve("dropins/greeter.jar"), "first", "org.example.missing");
        Run run = product.run("--version");
        assertEquals(0, run.exitCode());
        assertTrue(run.err().contains("greeter.jar") && run.err().contains("org.example.missing"), run.err());
    }

    @Test
    void aDropInThatIsNoJarIsNamedAndTheCommandStillRuns() throws Exception {
        Files.writeString(product.folder().resolve("dropins/broken.jar"), "no jar");
        Run run = product.run("--version");
        assertEquals(0, run.exitCode());
        assertTrue(run.err().contains("broken.jar"), run.err());
    }

    private String output() throws IOException, InterruptedException {
        Run run = product.run("--version");
        assertEquals(0, run.exitCode(), run.err());
        return run.out();
    }

    private static void writeBundle(Path jar, String version, String... imports) throws IOException {
        Manifest manifest = new Manifest();
        Attributes main = manifest.getMainAttributes();
        main.put(Attributes.Name.MANIFEST_VERSION, "1.0");
        main.putValue("Bundle-ManifestVersion", "2");
        main.putValue("Bundle-SymbolicName", "greeter");
        main.putValue("Bundle-Name", "greeter " + version);
        main.putValue("Bundle-Activator", Greeter.class.getName());
        main.putValue("Import-Package", String.join(",", "org.osgi.framework", String.join(",", imports))
                .replaceAll(",$", ""));
        String path = Greeter.class.getName().replace('.', '/') + ".class";
        try (OutputStream file = Files.newOutputStream(jar);
                JarOutputStream out = new JarOutputStream(file, manifest);
                InputStream bytes = Greeter.class.getClassLoader().getResourceAsStream(path)) {
            out.putNextEntry(new ZipEntry(path));
            bytes.transferTo(out);
        }
    }
}
