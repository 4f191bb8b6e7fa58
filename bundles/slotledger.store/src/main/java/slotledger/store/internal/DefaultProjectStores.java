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
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import java.util.concurrent.ConcurrentHashMap;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.annotations.Deactivate;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Journal;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.model.project.PasswordPrompt;
import slotledger.model.project.ProjectListener;
import slotledger.model.project.Watch;
import slotledger.store.ProjectSource;
import slotledger.store.ProjectStore;
import slotledger.store.ProjectStores;
import slotledger.store.SharedProjects;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** Projects in folders and packed files. */
@Component
public final class DefaultProjectStores implements ProjectStores {

    /** Longer than any command has a project open. */
    private static final Duration PATIENCE = Duration.ofSeconds(10);
    /** Longer than a database server takes to start again. */
    private static final Duration TEAM_PATIENCE = Duration.ofSeconds(30);

    private final Clock clock;
    private final Schema schema;
    private final Duration patience;
    private final TeamDatabases databases;
    /** Seals of the entries that this program wrote. */
    private final Set<String> own = ConcurrentHashMap.newKeySet();

    @Activate
    public DefaultProjectStores() {
        this(Clock.systemUTC(), Schema.today(), PATIENCE, new TeamDatabases(System::getenv, TEAM_PATIENCE));
    }

    DefaultProjectStores(Clock clock, Schema schema, Duration patience) {
        this(clock, schema, patience, new TeamDatabases(System::getenv, patience));
    }

    DefaultProjectStores(Clock clock, Schema schema, Duration patience, TeamDatabases databases) {
        this.clock = clock;
        this.schema = schema;
        this.patience = patience;
        this.databases = databases;
    }

    @Deactivate
    void deactivate() {
        databases.close();
    }

    @Override
    public boolean isProject(Path place) {
        return Files.isDirectory(place)
                ? Files.exists(place.resolve(Mark.NAME)) || Files.exists(place.resolve(H2File.NAME))
                        || TeamFile.isIn(place)
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
        return Files.isDirectory(place) ? openFolder(place, Optional.empty()) : PackSource.open(place);
    }

    @Override
    public ProjectStore open(Path folder) throws StoreException {
        return open(folder, Optional.empty());
    }

    @Override
    public ProjectStore open(Path folder, Journal known) throws StoreException {
        return open(folder, Optional.of(known));
    }

    private SqlStore open(Path folder, Optional<Journal> known) throws StoreException {
        if (Files.isRegularFile(folder)) {
            throw new StoreException(Trouble.REFUSED, "The project " + folder
                    + " is packed and can't be changed. Unpack it first.");
        }
        return openFolder(folder, known);
    }

    private SqlStore openFolder(Path folder, Optional<Journal> known) throws StoreException {
        if (!isProject(folder)) {
            throw new StoreException(Trouble.MISSING, "There is no project in " + folder
                    + ". The command \"project create\" makes one.");
        }
        if (TeamFile.isIn(folder)) {
            if (Files.exists(folder.resolve(H2File.NAME))) {
                throw new StoreException(Trouble.DAMAGED, "The folder " + folder + " holds a project of its own ("
                        + H2File.NAME + ") and leads to a team's project (" + TeamFile.NAME + "), too. Move the one "
                        + "that is not meant to another folder.");
            }
            TeamFile team = TeamFile.read(folder);
            return TeamStore.open(folder, team, databases.at(team.place()), clock, own, known);
        }
        return FolderStore.open(folder, new H2File(folder, schema, patience), clock, own, known);
    }

    @Override
    public void pack(Path folder, Path file, boolean force) throws StoreException {
        try (SqlStore store = openFolder(folder, Optional.empty())) {
            new PackWriter(store).write(file, force);
        }
    }

    @Override
    public Watch watch(Path project, ProjectListener listener) throws StoreException {
        long last;
        try (ProjectStore store = open(project)) {
            last = store.journal().last().number();
        }
        if (!TeamFile.isIn(project)) {
            return Watching.start(new MarkEye(project), last, listener);
        }
        TeamFile team = TeamFile.read(project);
        return Watching.start(new TeamEye(databases.at(team.place()).single(), team.project()), last, listener);
    }

    @Override
    public SharedProjects shared() {
        return new DefaultSharedProjects(this, databases, clock);
    }

    @Override
    public void askForPasswords(PasswordPrompt prompt) {
        databases.askForPasswords(prompt);
    }

    @Override
    public void unpack(Path file, Path folder) throws StoreException {
        try (PackSource source = PackSource.open(file); NewFolder made = NewFolder.at(folder)) {
            begin(made.work(), source.mark(), project -> {
                for (Original original : source.originals()) {
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
