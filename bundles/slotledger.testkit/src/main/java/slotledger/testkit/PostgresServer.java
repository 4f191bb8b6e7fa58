package slotledger.testkit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.net.ServerSocket;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Assertions;
import org.junit.jupiter.api.Assumptions;

/**
 * A PostgreSQL server of the tests' own, in a temporary folder, with what Debian installs below
 * {@code /usr/lib/postgresql}. It asks for passwords, as a real one does.
 *
 * <p>A test that asks for it where PostgreSQL is missing is skipped with a message, or fails where
 * {@link OutsideData} would.
 */
public final class PostgresServer {

    /** The administrator of the server. */
    public static final String ADMIN = "admin";
    /** The password of all users that the tests make. */
    public static final String PASSWORD = "only for tests";

    private static final Path INSTALLED = Path.of("/usr/lib/postgresql");
    private static final int PATIENCE_S = 60;
    /** Debian's user for PostgreSQL, which refuses to run as root. */
    private static final String SYSTEM_USER = "postgres";

    private static PostgresServer running;

    private final Path programs;
    private final Path folder;
    private final int port;

    private PostgresServer(Path programs, Path folder, int port) {
        this.programs = programs;
        this.folder = folder;
        this.port = port;
    }

    /** The server, which runs until the tests of this program have ended. */
    public static synchronized PostgresServer running() {
        if (running == null) {
            try {
                running = make(programs());
            } catch (IOException problem) {
                throw new UncheckedIOException(problem);
            }
        }
        return running;
    }

    private static Path programs() throws IOException {
        if (Files.isDirectory(INSTALLED)) {
            try (Stream<Path> versions = Files.list(INSTALLED)) {
                Path found = versions.map(version -> version.resolve("bin"))
                        .filter(bin -> Files.isExecutable(bin.resolve("initdb"))).max(Comparator.naturalOrder())
                        .orElse(null);
                if (found != null) {
                    return found;
                }
            }
        }
        String message = "PostgreSQL is not installed (%s is missing), so nothing is tested on it".formatted(INSTALLED);
        if (OutsideData.required()) {
            Assertions.fail(message);
        }
        return Assumptions.abort(message);
    }

    private static PostgresServer make(Path programs) throws IOException {
        Path folder = Files.createTempDirectory("slotledger-postgres-");
        int port;
        try (ServerSocket free = new ServerSocket(0)) {
            port = free.getLocalPort();
        }
        PostgresServer server = new PostgresServer(programs, folder, port);
        Path password = Files.writeString(folder.resolve("password"), PASSWORD);
        if (isRoot()) {
            for (Path path : List.of(folder, password)) {
                Files.setOwner(path,
                        folder.getFileSystem().getUserPrincipalLookupService().lookupPrincipalByName(SYSTEM_USER));
            }
        }
        server.run("initdb", "-D", server.data(), "-U", ADMIN, "-A", "scram-sha-256", "--pwfile=" + password, "-E",
                "UTF8", "--no-sync");
        Runtime.getRuntime().addShutdownHook(new Thread(server::remove, "remove the database server of the tests"));
        server.start();
        return server;
    }

    /** The address of one of its databases, for Java. */
    public String url(String database) {
        return "jdbc:postgresql://localhost:" + port + "/" + database;
    }

    /** Starts it, and returns when it answers. */
    public void start() {
        run("pg_ctl", "-D", data(), "-w", "-t", Integer.toString(PATIENCE_S), "-l", folder.resolve("log").toString(),
                "-o", "-p " + port + " -c listen_addresses=localhost -c fsync=off -c unix_socket_directories=" + folder,
                "start");
    }

    /** Stops it at once, as when its process is killed: whatever is not committed is lost. */
    public void stopAtOnce() {
        run("pg_ctl", "-D", data(), "-m", "immediate", "-w", "stop");
    }

    /** Runs SQL as a user in a database; what it prints, one line a row with | between columns. */
    public String sql(String database, String user, String sql) {
        return run("psql", "-h", "localhost", "-p", Integer.toString(port), "-U", user, "-d", database, "-qAt", "-v",
                "ON_ERROR_STOP=1", "-c", sql);
    }

    private String data() {
        return folder.resolve("data").toString();
    }

    private String run(String program, String... arguments) {
        List<String> command = new ArrayList<>();
        if (isRoot() && !program.equals("psql")) {
            command.addAll(List.of("runuser", "-u", SYSTEM_USER, "--"));
        }
        command.add(programs.resolve(program).toString());
        command.addAll(List.of(arguments));
        try {
            Path said = Files.createTempFile("slotledger-postgres-", ".txt");
            ProcessBuilder builder = new ProcessBuilder(command).redirectErrorStream(true)
                    .redirectOutput(said.toFile()).directory(folder.toFile());
            builder.environment().put("PGPASSWORD", PASSWORD);
            Process process = builder.start();
            boolean ended = process.waitFor(PATIENCE_S, TimeUnit.SECONDS);
            String text = Files.readString(said, StandardCharsets.UTF_8).strip();
            Files.delete(said);
            if (!ended || process.exitValue() != 0) {
                throw new IllegalStateException("%s failed: %s".formatted(command, text));
            }
            return text;
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        } catch (InterruptedException stop) {
            Thread.currentThread().interrupt();
            throw new IllegalStateException(stop);
        }
    }

    private void remove() {
        try {
            stopAtOnce();
        } catch (IllegalStateException stoppedAlready) {
            // A test stopped it and didn't start it again.
        }
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException stays) {
            // It lies in the folder for temporary files.
        }
    }

    private static boolean isRoot() {
        return System.getProperty("user.name").equals("root");
    }
}
