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
import java.util.Optional;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.flywaydb.core.api.ResourceProvider;
import org.flywaydb.core.api.configuration.FluentConfiguration;
import org.flywaydb.core.api.resource.LoadableResource;

/**
 * The tables, and how those of an earlier release become those of today. A script that was released is never changed; a
 * change of the tables is a new script with the next number.
 */
final class Schema {

    private static final String FORM = "V%s__%s.sql";
    private static final List<Form> TODAY = List.of(released("1", "journal"));
    private static final List<Form> TEAM = List.of(released("1", "journal"), released("1.1", "team"));

    private final List<Form> forms;
    private final Optional<String> schema;

    /**
     * One step of the tables.
     *
     * @param number "2", or "2.1" for what only PostgreSQL needs beside it
     */
    record Form(String number, String name, String script) {

        private String file() {
            return FORM.formatted(number, name);
        }
    }

    /** @param schema in which the tables are; empty means the database's usual one */
    Schema(List<Form> forms, Optional<String> schema) {
        this.forms = List.copyOf(forms);
        this.schema = schema;
    }

    /** The tables of a project in a folder. */
    static Schema today() {
        return new Schema(TODAY, Optional.empty());
    }

    /** The same tables with roles and rights, in PostgreSQL. */
    static Schema team() {
        return new Schema(TEAM, Optional.of(TeamDatabase.SCHEMA));
    }

    static Form released(String number, String name) {
        return new Form(number, name, script(FORM.formatted(number, name)));
    }

    int newest() {
        return major(forms.get(forms.size() - 1).number());
    }

    /** The version of a database; 0 where it is empty. */
    static int version(Connection connection) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            try (ResultSet tables = statement.executeQuery("select count(*) from information_schema.tables "
                    + "where table_name = 'flyway_schema_history' and table_schema = current_schema")) {
                tables.next();
                if (tables.getInt(1) == 0) {
                    return 0;
                }
            }
            try (ResultSet rows = statement.executeQuery("select \"version\" from \"flyway_schema_history\" "
                    + "where \"success\" = true and \"version\" is not null order by \"installed_rank\" desc")) {
                return rows.next() ? major(rows.getString(1)) : 0;
            }
        }
    }

    private static int major(String number) {
        return Integer.parseInt(number.replaceFirst("\\..*", ""));
    }

    /** Brings a database to the newest version. */
    void migrate(DataSource database) throws SQLException {
        try {
            FluentConfiguration flyway = Flyway.configure(Schema.class.getClassLoader())
                    .dataSource(database)
                    .resourceProvider(new Scripts())
                    .javaMigrationClassProvider(List::of)
                    .locations(new String[0])
                    .group(schema.isPresent());
            schema.ifPresent(flyway::schemas);
            flyway.load().migrate();
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
            return forms.stream().<LoadableResource>map(form -> new Script(form.file(), form.script())).toList();
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
