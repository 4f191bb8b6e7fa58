package slotledger.store.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.UUID;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Entry;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.ProjectStores;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** Projects in folders and packed files. */
@Component
public final class DefaultProjectStores implements ProjectStores {

    /** Longer than any command has a project open. */
    private static final Duration PATIENCE = Duration.ofSeconds(10);

    private final Clock clock;
    private final Schema schema;
    private final Duration patience;

    @Activate
    public DefaultProjectStores() {
        this(Clock.systemUTC(), Schema.today(), PATIENCE);
    }

    DefaultProjectStores(Clock clock, Schema schema, Duration patience) {
        this.clock = clock;
        this.schema = schema;
        this.patience = patience;
    }

    @Override
    public boolean isProject(Path place) {
        return Files.isDirectory(place)
                ? Files.exists(place.resolve(Mark.NAME)) || Files.exists(place.resolve(H2File.NAME))
                : Files.isRegularFile(place) && place.getFileName().toString().endsWith(PACKED);
    }

    @Override
    public void create(Path folder, String title, Map<Part, Map<String, Path>> files, Author author)
            throws StoreException {
        try (NewFolder made = NewFolder.at(folder)) {
            EntryRow first = EntryRow.of(1, clock.instant(), author, new Change.Created(title), "");
            begin(made.work(), new Mark(UUID.randomUUID(), 1, first.seal()), project -> project.add(first));
            if (!files.isEmpty()) {
                try (ProjectStore store = open(made.work())) {
                    Map<Part, List<Original>> parts = new EnumMap<>(Part.class);
                    for (Map.Entry<Part, Map<String, Path>> part : files.entrySet()) {
                        List<Original> originals = new ArrayList<>();
                        for (Map.Entry<String, Path> file : new TreeMap<>(part.getValue()).entrySet()) {
                            originals.add(store.keep(file.getKey(), file.getValue()));
                        }
                        parts.put(part.getKey(), originals);
                    }
                    store.append(new Change.Imported(parts), author);
                }
            }
            made.publish();
        }
    }

    /** What a new database is filled with. */
    @FunctionalInterface
    private interface Filling {
        void into(SqlProject project) throws SQLException, IOException;
    }

    private void begin(Path folder, Mark mark, Filling filling) throws StoreException {
        try (Connection connection = new H2File(folder, schema, patience).create()) {
            SqlProject project = new SqlProject(connection, mark.id());
            project.begin();
            filling.into(project);
            connection.commit();
            H2File.settle(connection);
            mark.write(folder);
        } catch (SQLException | IOException problem) {
            throw new StoreException(Trouble.UNWRITABLE, "The project can't be written to " + folder + ": "
                    + problem.getMessage() + ". Nothing was made. Check that the disk has room.", problem);
        }
    }

    @Override
    public ProjectSource read(Path place) throws StoreException {
        return Files.isDirectory(place) ? openFolder(place, List.of()) : PackSource.open(place);
    }

    @Override
    public ProjectStore open(Path folder) throws StoreException {
        return open(folder, List.of());
    }

    @Override
    public ProjectStore open(Path folder, Journal known) throws StoreException {
        return open(folder, known.entries());
    }

    private ProjectStore open(Path folder, List<Entry> known) throws StoreException {
        if (Files.isRegularFile(folder)) {
            throw new StoreException(Trouble.REFUSED, "The project " + folder
                    + " is packed and can't be changed. Unpack it first.");
        }
        return openFolder(folder, known);
    }

    private FolderStore openFolder(Path folder, List<Entry> known) throws StoreException {
        if (!isProject(folder)) {
            throw new StoreException(Trouble.MISSING, "There is no project in " + folder
                    + ". The command \"project create\" makes one.");
        }
        return FolderStore.open(folder, new H2File(folder, schema, patience), clock, known);
    }

    @Override
    public void pack(Path folder, Path file, boolean force) throws StoreException {
        try (FolderStore store = openFolder(folder, List.of())) {
            new PackWriter(store).write(file, force);
        }
    }

    @Override
    public void unpack(Path file, Path folder) throws StoreException {
        try (PackSource source = PackSource.open(file); NewFolder made = NewFolder.at(folder)) {
            Map<String, Original> originals = new TreeMap<>();
            source.journal().entries().stream().map(Entry::change).forEach(change -> Originals.of(change)
                    .forEach(original -> originals.put(original.sha256(), original)));
            begin(made.work(), source.mark(), project -> {
                for (Original original : originals.values()) {
                    try (InputStream bytes = source.bytes(original)) {
                        project.keep(original, bytes);
                    }
                }
                for (EntryRow row : source.rows()) {
                    project.add(row);
                }
            });
            made.publish();
        }
    }
}
