package slotledger.cli.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.PrintStream;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.serve.Pass;
import slotledger.serve.PhoneServer;

class ServeCommandTest {

    private final FakePhones phones = new FakePhones();
    private final ByteArrayOutputStream out = new ByteArrayOutputStream();
    private final ByteArrayOutputStream err = new ByteArrayOutputStream();

    @TempDir
    private Path folder;

    @Test
    void withoutMoreOnlyThisComputerIsServedForAWeek() {
        assertEquals(ExitCode.INPUT.number(), run("serve", "school"));
        assertEquals(Optional.empty(), phones.asked.network());
        assertEquals(Duration.ofDays(7), phones.asked.validity());
        assertEquals(8447, phones.asked.port());
        assertTrue(err().contains("has no rounds yet"), err());
    }

    @Test
    void everythingThatIsGivenReachesTheService() throws Exception {
        Path password = Files.writeString(folder.resolve("pw.txt"), "open sesame\n");
        run("serve", "school", "--network", "planner.example", "--port", "9000", "--certificate", "a.p12",
                "--password-file", password.toString(), "--days", "2", "--new-secret", "R1", "--new-secret", "R2");
        assertEquals(Optional.of("planner.example"), phones.asked.network());
        assertEquals("open sesame", phones.asked.certificate().orElseThrow().password());
        assertEquals(Set.of("R1", "R2"), phones.asked.renew());
        assertFalse(phones.asked.toString().contains("sesame"), phones.asked.toString());
    }

    @Test
    void whatCantBeIsRefusedBeforeAnythingStarts() {
        assertEquals(ExitCode.INPUT.number(), run("serve", "school", "--days", "0"));
        assertEquals(ExitCode.INPUT.number(), run("serve", "school", "--port", "70000"));
        assertEquals(ExitCode.INPUT.number(), run("serve", "school", "--key", "k.pem"));
        assertNull(phones.asked);
    }

    @Test
    void aSecretIsShownWhereItWasJustMadeAndTheCodeOnlyOnATerminal() {
        List<List<Boolean>> code = List.of(List.of(true, false), List.of(true, true), List.of(false, true));
        Pass made = new Pass("R1", "Ada Miles", 3, Instant.now(), Optional.of(new Pass.Entry("7KQM-03WD-XR5T",
                URI.create("http://localhost:1/#r=R1&s=7KQM-03WD-XR5T"), code)));
        Pass kept = new Pass("R2", "", 1, Instant.now(), Optional.empty());
        new ServeText(console(false)).print(server(made, kept), Optional.empty(), false, Optional.empty());
        String text = out();
        assertTrue(text.contains("secret 7KQM-03WD-XR5T"), text);
        assertTrue(text.contains("R2, nobody named yet, 1 machine"), text);
        assertTrue(text.contains("--new-secret R2"), text);
        assertFalse(text.contains("\u2588"), text);
        assertFalse(text.contains("Not encrypted"), text);
    }

    @Test
    void aNetworkWithoutEncryptionIsWarnedOf() {
        new ServeText(console(false)).print(server(), Optional.of("192.0.2.1"), false, Optional.of(Path.of("p.html")));
        assertTrue(out().contains("Not encrypted") && out().contains("p.html (who reads it can enter"), out());
    }

    private static PhoneServer server(Pass... passes) {
        return new PhoneServer() {
            @Override
            public URI address() {
                return URI.create("http://localhost:1/");
            }

            @Override
            public List<Pass> passes() {
                return List.of(passes);
            }

            @Override
            public void writePasses(Path file) {
            }

            @Override
            public void close() {
            }
        };
    }

    private int run(String... arguments) {
        return new Main(new FakeDesk(), phones).run(arguments, console(false));
    }

    private Console console(boolean terminal) {
        return new Console(new PrintStream(out, true, StandardCharsets.UTF_8),
                new PrintStream(err, true, StandardCharsets.UTF_8), terminal);
    }

    private String out() {
        return out.toString(StandardCharsets.UTF_8);
    }

    private String err() {
        return err.toString(StandardCharsets.UTF_8);
    }
}
