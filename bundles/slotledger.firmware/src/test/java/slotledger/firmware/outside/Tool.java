package slotledger.firmware.outside;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/** A program that others wrote and that decodes the same bytes; tests are skipped, or fail, where it is missing. */
final class Tool {

    private static final List<String> FOLDERS = List.of("/usr/sbin", "/usr/bin", "/sbin", "/bin");

    private final Path program;

    private Tool(Path program) {
        this.program = program;
    }

    static Tool find(String name, String debianPackage) {
        Path found = FOLDERS.stream().map(folder -> Path.of(folder, name)).filter(Files::isExecutable).findFirst()
                .orElse(null);
        String message = "The program %s is missing; Debian has it in %s".formatted(name, debianPackage);
        if (found == null && Boolean.parseBoolean(System.getenv("SLOTLEDGER_OUTSIDE_REQUIRED"))) {
            Assertions.fail(message);
        }
        Assumptions.assumeTrue(found != null, message);
        return new Tool(found);
    }

    String run(String... arguments) {
        try {
            Process process = new ProcessBuilder(Stream.concat(Stream.of(program.toString()), Stream.of(arguments))
                    .toList()).redirectErrorStream(true).start();
            String text = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
            process.waitFor();
            return text;
        } catch (IOException | InterruptedException e) {
            throw new IllegalStateException("The program %s must run.".formatted(program), e);
        }
    }
}
