package slotledger.bench;

import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Decision;
import slotledger.model.project.Fact;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.StoreException;
import slotledger.store.TeamPlace;
import slotledger.store.internal.DefaultProjectStores;
import slotledger.testkit.PostgresServer;

/**
 * A project of a million machines in the embedded database and in PostgreSQL, beside plain JDBC that keeps the same
 * bytes and rows in the same database, step by step in one run.
 */
public final class StoreBenchmarks {

    private static final int ENTRIES = 200;
    private static final Author ANNA = new Author("anna", "benchmark");

    private final List<String> table = new ArrayList<>();
    private final Path top;
    private final Path inventory;
    private final int machines;

    private StoreBenchmarks(Path top, int machines) throws IOException {
        this.top = top;
        this.machines = machines;
        this.inventory = top.resolve("fleet.csv");
        writeInventory();
    }

    /** Does something that is timed. */
    @FunctionalInterface
    private interface Step {
        void run() throws IOException, SQLException, StoreException;
    }

    /** @param arguments the folder for the result; then how many machines, a million unless given */
    public static void main(String[] arguments) throws Exception {
        Path top = Files.createTempDirectory("slotledger-store-bench-");
        try {
            StoreBenchmarks benchmarks =
                    new StoreBenchmarks(top, arguments.length < 2 ? 1_000_000 : Integer.parseInt(arguments[1]));
            benchmarks.embedded();
            benchmarks.team();
            benchmarks.table.forEach(System.out::println);
            Files.write(Path.of(arguments[0]).resolve("store-benchmarks.txt"), benchmarks.table);
        } finally {
            try (Stream<Path> all = Files.walk(top)) {
                for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(path);
                }
            }
        }
        System.exit(0);
    }

    private void writeInventory() throws IOException {
        try (BufferedWriter text = Files.newBufferedWriter(inventory)) {
            text.write("asset tag;serial;maker;model;site;room;cost centre;role;slot 1;slot 2;slot 3;slot 4\n");
            for (int i = 0; i < machines; i++) {
                text.write("K-%07d;S%08X;Kestrin;KB-%d;Site %d;Room %d;%d;office;4 GB;4 GB;empty;empty\n".formatted(i,
                        i * 31, 500 + i % 40, i % 20, i % 977, 4000 + i % 50));
            }
        }
    }

    private void embedded() throws Exception {
        DefaultProjectStores stores = new DefaultProjectStores();
        Path folder = top.resolve("embedded");
        Files.createDirectory(top.resolve("plain"));
        try (PlainJdbc plain = PlainJdbc.h2(top.resolve("plain").resolve("plain"))) {
            compare("H2", stores, folder, plain, () -> stores.create(folder, "bench", files(), ANNA));
        }
    }

    private void team() throws Exception {
        PostgresServer server = PostgresServer.running();
        server.sql("postgres", PostgresServer.ADMIN, "create database bench");
        DefaultProjectStores stores = new DefaultProjectStores();
        stores.askForPasswords((user, database) -> Optional.of(PostgresServer.PASSWORD.toCharArray()));
        TeamPlace place = new TeamPlace(server.url("bench"), Optional.of(PostgresServer.ADMIN));
        stores.shared().prepare(place);
        Path folder = top.resolve("team");
        try (PlainJdbc plain = PlainJdbc.postgres(server.url("bench"))) {
            compare("PostgreSQL", stores, folder, plain,
                    () -> stores.shared().create(place, folder, "bench", files(), ANNA));
        }
    }

    private Map<Part, Map<String, Path>> files() {
        return Map.of(Part.FLEET, Map.of("fleet.csv", inventory));
    }

    private void compare(String name, DefaultProjectStores stores, Path folder, PlainJdbc plain, Step create)
            throws Exception {
        row(name, "import of %,d machines (%d MB)".formatted(machines, Files.size(inventory) / 1_000_000), create,
                () -> plain.keep(inventory));
        row(name, ENTRIES + " entries, one by one", () -> {
            try (ProjectStore store = stores.open(folder)) {
                for (int i = 0; i < ENTRIES; i++) {
                    store.append(new Change.Decided(new Decision.Correction(new AssetTag("K-%07d".formatted(i)),
                            Fact.ROLE, "office", "lab")), ANNA);
                }
            }
        }, () -> plain.add(ENTRIES));
        row(name, "open, with " + (ENTRIES + 2) + " entries checked", () -> stores.open(folder).close(),
                plain::openAndRead);
        row(name, "inventory taken out", () -> takeOut(stores, folder, top.resolve(name + ".csv")),
                () -> plain.takeOut(top.resolve(name + "-plain.csv")));
        row(name, "last machine looked up in the inventory", () -> {
            Path file = top.resolve(name + "-search.csv");
            takeOut(stores, folder, file);
            find(file);
        }, () -> {
            Path file = top.resolve(name + "-plain-search.csv");
            plain.takeOut(file);
            find(file);
        });
    }

    private static void takeOut(DefaultProjectStores stores, Path folder, Path file) throws StoreException {
        try (ProjectSource source = stores.read(folder)) {
            Original fleet = source.journal().state().files().get(0);
            source.write(fleet, file);
        }
    }

    private void find(Path file) throws IOException {
        String tag = "K-%07d;".formatted(machines - 1);
        try (Stream<String> lines = Files.lines(file)) {
            lines.filter(line -> line.startsWith(tag)).findFirst().orElseThrow();
        }
    }

    private void row(String database, String step, Step ours, Step bare) throws Exception {
        double seconds = seconds(ours);
        double plain = seconds(bare);
        table.add("%-11s %-45s %8.2f s, plain JDBC %8.2f s, ratio %5.2f".formatted(database, step, seconds, plain,
                seconds / plain));
    }

    private static double seconds(Step step) throws Exception {
        long start = System.nanoTime();
        step.run();
        return (System.nanoTime() - start) / 1e9;
    }
}
