package slotledger.store.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.Reader;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.Collection;
import java.util.List;
import java.util.Objects;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.ResourceProvider;
import org.flywaydb.core.api.resource.LoadableResource;

/**
 * The tables, and how those of an earlier release become those of today. A script that was released is never changed; a
 * change of the tables is a new script with the next number.
 */
final class Schema {

    private static final String FORM = "V%d__%s.sql";

    private final List<String> names;
    private final List<String> scripts;

    /** @param scripts SQL, the first makes version 1 */
    Schema(List<String> names, List<String> scripts) {
        this.names = List.copyOf(names);
        this.scripts = List.copyOf(scripts);
    }

    static Schema today() {
        List<String> names = List.of("journal");
        return new Schema(names, names.stream()
                .map(name -> script(FORM.formatted(names.indexOf(name) + 1, name))).toList());
    }

    int newest() {
        return scripts.size();
    }

    /** The version of a database; 0 where it is empty. */
    static int version(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            try (ResultSet tables = statement.executeQuery("select count(*) from information_schema.tables "
                    + "where table_name = 'flyway_schema_history'")) {
                tables.next();
                if (tables.getInt(1) == 0) {
                    return 0;
                }
            }
            try (ResultSet rows = statement.executeQuery("select \"version\" from \"flyway_schema_history\" "
                    + "where \"success\" = true and \"version\" is not null order by \"installed_rank\" desc")) {
                return rows.next() ? Integer.parseInt(rows.getString(1)) : 0;
            }
        }
    }

    /** Brings a database to the newest version. */
    void migrate(DataSource database) throws SQLException {
        try {
            Flyway.configure(Schema.class.getClassLoader())
                    .dataSource(database)
                    .resourceProvider(new Scripts())
                    .javaMigrationClassProvider(List::of)
                    .locations(new String[0])
                    .load()
                    .migrate();
        } catch (FlywayException problem) {
            throw new SQLException(problem.getMessage(), problem);
        }
    }

    private static String script(String name) {
        try (InputStream file = Schema.class.getResourceAsStream(name)) {
            return new String(Objects.requireNonNull(file, name).readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException problem) {
            throw new UncheckedIOException(problem);
        }
    }

    /** Hands the scripts to Flyway, whose own search doesn't suit the framework. */
    private final class Scripts implements ResourceProvider {

        @Override
        public LoadableResource getResource(String name) {
            return all().stream().filter(script -> script.getFilename().equals(name)).findFirst().orElse(null);
        }

        @Override
        public Collection<LoadableResource> getResources(String prefix, String[] suffixes) {
            return prefix.equals("V") ? all() : List.of();
        }

        private List<LoadableResource> all() {
            return names.stream().<LoadableResource>map(name -> {
                int index = names.indexOf(name);
                return new Script(FORM.formatted(index + 1, name), scripts.get(index));
            }).toList();
        }
    }

    /** One script. */
    private static final class Script extends LoadableResource {

        private final String name;
        private final String text;

        Script(String name, String text) {
            this.name = name;
            this.text = text;
        }

        @Override
        public Reader read() {
            return new StringReader(text);
        }

        @Override
        public String getAbsolutePath() {
            return name;
        }

        @Override
        public String getAbsolutePathOnDisk() {
            return name;
        }

        @Override
        public String getFilename() {
            return name;
        }

        @Override
        public String getRelativePath() {
            return name;
        }
    }
}
