package slotledger.store.internal;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.store.ProjectStore;

/** What runs in a program of its own: writes into a project, or holds it open. */
final class Child {

    private static final int BEFORE_CLOSING = 4;

    private Child() {
    }

    /** Starts this class with another Java. */
    static Process start(String work, Path folder) throws IOException {
        String java = Path.of(System.getProperty("java.home"), "bin", "java").toString();
        return new ProcessBuilder(java, "-XX:TieredStopAtLevel=1", "-XX:+UseSerialGC", "-Xmx128m", "-cp",
                System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                Child.class.getName(), work, folder.toString()).redirectError(ProcessBuilder.Redirect.INHERIT).start();
    }

    static BufferedReader output(Process process) {
        return new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    public static void main(String[] arguments) throws Exception {
        Path folder = Path.of(arguments[1]);
        DefaultProjectStores stores =
                new DefaultProjectStores(Clock.systemUTC(), Schema.today(), Duration.ofSeconds(10));
        if (arguments[0].equals("hold")) {
            try (ProjectStore store = stores.open(folder)) {
                acknowledge(store.journal().last().number());
                System.in.read();
            }
        } else {
            write(stores, folder);
        }
    }

    /** Goes on until it is killed: decisions and files, with the project closed and opened now and then. */
    private static void write(DefaultProjectStores stores, Path folder) throws Exception {
        Path file = Files.createTempFile("original", ".csv");
        file.toFile().deleteOnExit();
        while (true) {
            try (ProjectStore store = stores.open(folder)) {
                for (int i = 0; i < BEFORE_CLOSING; i++) {
                    long next = store.journal().last().number() + 1;
                    Author author = new Author("child", "entry " + next);
                    if (i % 2 == 0) {
                        store.append(Fixture.correction("K-" + next, "office"), author);
                    } else {
                        Files.writeString(file, ("line of " + next + "\n").repeat((int) (next % 50) * 2000));
                        Original original = store.keep("fleet.csv", file);
                        store.append(new Change.Imported(Map.of(Part.FLEET, List.of(original))), author);
                    }
                    acknowledge(next);
                }
            }
        }
    }

    private static void acknowledge(long entry) {
        System.out.println(entry);
        System.out.flush();
    }
}
