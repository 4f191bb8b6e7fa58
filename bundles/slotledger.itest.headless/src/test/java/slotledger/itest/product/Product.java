package slotledger.itest.product;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;

/** A copy of the product that the build has just made, for a test to run and to change. */
final class Product {

    /** What one run of the command line left behind. */
    record Run(int exitCode, String out, String err) {
    }

    private static final boolean WINDOWS = System.getProperty("os.name").startsWith("Windows");

    private final Path folder;

    private Product(Path folder) {
        this.folder = folder;
    }

    static Product copyTo(Path folder) throws IOException {
        Path built = Path.of(System.getProperty("product"));
        if (!Files.isDirectory(built)) {
            throw new IllegalStateException("The product (%s) must be built first.".formatted(built));
        }
        try (Stream<Path> files = Files.walk(built)) {
            for (Path file : files.toList()) {
                Path target = folder.resolve(built.relativize(file).toString());
                Files.createDirectories(target.getParent());
                Files.copy(file, target);
            }
        }
        return new Product(folder);
    }

    Path folder() {
        return folder;
    }

    Run run(String... arguments) throws IOException, InterruptedException {
        List<String> command = new ArrayList<>();
        command.add(folder.resolve(WINDOWS ? "slotledger.cmd" : "slotledger").toString());
        command.addAll(List.of(arguments));
        Path out = Files.createTempFile("out", ".txt");
        Path err = Files.createTempFile("err", ".txt");
        ProcessBuilder builder = new ProcessBuilder(command).redirectOutput(out.toFile()).redirectError(err.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        Process process = builder.start();
        process.getOutputStream().close();
        if (!process.waitFor(2, TimeUnit.MINUTES)) {
            process.destroyForcibly();
            throw new IllegalStateException("The command (%s) must end by itself.".formatted(command));
        }
        return new Run(process.exitValue(), readAndDelete(out), readAndDelete(err));
    }

    private static String readAndDelete(Path file) throws IOException {
        String text = Files.readString(file, StandardCharsets.UTF_8);
        Files.delete(file);
        return text;
    }
}
