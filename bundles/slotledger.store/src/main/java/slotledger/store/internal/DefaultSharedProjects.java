package slotledger.store.internal;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.UUID;
import java.util.stream.Collectors;
import slotledger.model.project.Author;
import slotledger.model.project.Change;
import slotledger.model.project.Original;
import slotledger.model.project.Part;
import slotledger.model.project.TeamRole;
import slotledger.store.ProjectStores;
import slotledger.store.SharedProjects;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;
import slotledger.store.TeamPlace;

/** Brings projects into a team's database, and people to them. */
final class DefaultSharedProjects implements SharedProjects {

    private static final String UNWRITABLE = "The project can't be written";
    private static final String NOTHING_MADE = "Nothing was made; try again later.";

    private final ProjectStores stores;
    private final TeamDatabases databases;
    private final Clock clock;

    DefaultSharedProjects(ProjectStores stores, TeamDatabases databases, Clock clock) {
        this.stores = stores;
        this.databases = databases;
        this.clock = clock;
    }

    @Override
    public void prepare(TeamPlace place) throws StoreException {
        TeamSchema.prepare(databases.at(place));
    }

    @Override
    public void create(TeamPlace place, Path folder, String title, Map<Part, Map<String, Path>> files, Author author)
            throws StoreException {
        TeamDatabase database = databases.at(place);
        UUID id = UUID.randomUUID();
        EntryRow begun = EntryRow.of(1, clock.instant(), author, new Change.Created(title), "");
        List<EntryRow> rows = new ArrayList<>(List.of(begun));
        Map<Original, Path> originals = new LinkedHashMap<>();
        Map<Part, List<Original>> parts = new EnumMap<>(Part.class);
        for (Map.Entry<Part, Map<String, Path>> part : files.entrySet()) {
            List<Original> ofPart = new ArrayList<>();
            for (Map.Entry<String, Path> file : new TreeMap<>(part.getValue()).entrySet()) {
                Original original = SqlStore.identify(file.getKey(), file.getValue());
                originals.put(original, file.getValue());
                ofPart.add(original);
            }
            parts.put(part.getKey(), ofPart);
        }
        if (!parts.isEmpty()) {
            rows.add(EntryRow.of(2, clock.instant(), author, new Change.Imported(parts), begun.seal()));
        }
        try (NewFolder made = NewFolder.at(folder)) {
            database.riding(UNWRITABLE, NOTHING_MADE, connection -> {
                TeamSchema.mustBeToday(connection, database);
                SqlProject project = new SqlProject(connection, id);
                // It is there already where the answer to its commit was lost.
                if (project.last() == 0) {
                    project.begin();
                    for (Map.Entry<Original, Path> file : originals.entrySet()) {
                        send(project, file.getKey(), file.getValue());
                    }
                    for (EntryRow row : rows) {
                        project.add(row);
                    }
                }
                return null;
            });
            new TeamFile(place, id).write(made.work());
            made.publish();
        }
    }

    private static void send(SqlProject project, Original original, Path file) throws SQLException, IOException {
        if (!project.holds(original)) {
            try (InputStream bytes = Files.newInputStream(file)) {
                project.keep(original, bytes);
            }
        }
    }

    @Override
    public void share(TeamPlace place, Path folder, Path project) throws StoreException {
        TeamDatabase database = databases.at(place);
        Path work = temporary();
        try (NewFolder made = NewFolder.at(folder)) {
            Path packed = project;
            if (Files.isDirectory(project)) {
                packed = work.resolve("project" + ProjectStores.PACKED);
                stores.pack(project, packed, false);
            }
            try (PackSource source = PackSource.open(packed)) {
                database.riding(UNWRITABLE, NOTHING_MADE, connection -> {
                    TeamSchema.mustBeToday(connection, database);
                    send(source, connection, database);
                    return null;
                });
                new TeamFile(place, source.id()).write(made.work());
            }
            made.publish();
        } finally {
            sweep(work);
        }
    }

    private static void send(PackSource source, Connection connection, TeamDatabase database)
            throws SQLException, IOException, StoreException {
        SqlProject project = new SqlProject(connection, source.id());
        if (project.last() > 0) {
            // Ours, where the answer to its commit was lost.
            if (project.seal(source.mark().entries()).filter(source.mark().seal()::equals).isPresent()
                    && project.last() == source.mark().entries()) {
                return;
            }
            throw new StoreException(Trouble.EXISTS, "The database " + database.name() + " holds this project already,"
                    + " and it went on there. Use \"project team join\".");
        }
        project.begin();
        for (Original original : source.originals()) {
            try (InputStream bytes = source.bytes(original)) {
                project.keep(original, bytes);
            }
        }
        for (EntryRow row : source.rows()) {
            project.add(row);
        }
    }

    @Override
    public List<Listed> list(TeamPlace place) throws StoreException {
        TeamDatabase database = databases.at(place);
        return database.riding("The projects of " + database.name() + " can't be read", "Try again later.",
                connection -> {
                    TeamSchema.mustBeToday(connection, database);
                    List<Listed> projects = new ArrayList<>();
                    try (Statement statement = connection.createStatement();
                            ResultSet rows = statement.executeQuery("select id from project")) {
                        while (rows.next()) {
                            UUID id = UUID.fromString(rows.getString(1));
                            SqlProject project = new SqlProject(connection, id);
                            projects.add(new Listed(id, title(project.first()), project.last()));
                        }
                    }
                    projects.sort(Comparator.comparing(Listed::title).thenComparing(Listed::id));
                    return projects;
                });
    }

    private static String title(EntryRow first) {
        return first.entry().change() instanceof Change.Created created ? created.title() : "";
    }

    @Override
    public void join(TeamPlace place, Path folder, Optional<UUID> project) throws StoreException {
        List<Listed> there = list(place);
        String names = there.stream().map(each -> each.id() + " \"" + each.title() + "\" (" + each.entries()
                + " entries)").collect(Collectors.joining(", "));
        List<Listed> meant = there.stream().filter(each -> project.isEmpty() || project.get().equals(each.id()))
                .toList();
        if (there.isEmpty()) {
            throw new StoreException(Trouble.MISSING, "The database " + place.name() + " holds no project yet. "
                    + "\"project team create\" makes one.");
        }
        if (meant.size() != 1) {
            throw new StoreException(Trouble.REFUSED, (meant.isEmpty() ? "There is no project of that id in "
                    : "There are several projects in ") + place.name() + ": " + names + ". Say which with --project.");
        }
        try (NewFolder made = NewFolder.at(folder)) {
            new TeamFile(place, meant.get(0).id()).write(made.work());
            made.publish();
        }
    }

    @Override
    public boolean admit(Path project, String user, TeamRole role) throws StoreException {
        TeamDatabase database = databases.at(TeamFile.read(project).place());
        return database.riding("The user " + user + " can't be given a role", "Try again later.", connection -> {
            try (Statement statement = connection.createStatement()) {
                String name = quoted(user);
                boolean made = !isUser(connection, user);
                if (made) {
                    statement.execute("create role " + name + " login");
                }
                for (TeamRole each : TeamRole.values()) {
                    statement.execute(each == role ? "grant " + TeamSchema.role(each) + " to " + name
                            : "revoke " + TeamSchema.role(each) + " from " + name);
                }
                return made;
            }
        });
    }

    private static String quoted(String identifier) {
        return '"' + identifier.replace("\"", "\"\"") + '"';
    }

    private static boolean isUser(Connection connection, String user) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select 1 from pg_roles where rolname = ?")) {
            select.setString(1, user);
            try (ResultSet rows = select.executeQuery()) {
                return rows.next();
            }
        }
    }

    private static Path temporary() throws StoreException {
        try {
            return Files.createTempDirectory("slotledger-team-");
        } catch (IOException problem) {
            throw new StoreException(Trouble.UNWRITABLE, "The folder for temporary files can't be written: "
                    + problem.getMessage() + ". Check that its disk has room.", problem);
        }
    }

    private static void sweep(Path work) {
        try (var all = Files.walk(work)) {
            for (Path path : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(path);
            }
        } catch (IOException stays) {
            // It lies where the system clears up by itself.
        }
    }
}
