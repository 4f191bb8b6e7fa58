package slotledger.store.internal;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.security.MessageDigest;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import slotledger.model.project.Original;

/** One project in a database, in SQL that H2 and PostgreSQL both take. Whoever calls commits. */
final class SqlProject {

    /** Half of what H2 takes for a value that isn't a large object, so that pieces never lie apart from their row. */
    private static final int PIECE = 512 * 1024;

    private final Connection connection;
    private final String id;

    SqlProject(Connection connection, UUID id) {
        this.connection = connection;
        this.id = id.toString();
    }

    void begin() throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("insert into project (id) values (?)")) {
            insert.setString(1, id);
            insert.executeUpdate();
        }
    }

    List<EntryRow> entries() throws SQLException {
        return entriesAfter(0);
    }

    List<EntryRow> entriesAfter(long number) throws SQLException {
        return entries(number, Long.MAX_VALUE);
    }

    /** The entry that says how the project began. */
    EntryRow first() throws SQLException {
        return entries(0, 1).get(0);
    }

    private List<EntryRow> entries(long after, long last) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement("select number, made, who, why, kind, change, seal"
                + " from entry where project = ? and number > ? and number <= ? order by number")) {
            select.setString(1, id);
            select.setLong(2, after);
            select.setLong(3, last);
            List<EntryRow> entries = new ArrayList<>();
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    Instant made = rows.getObject(2, OffsetDateTime.class).toInstant();
                    entries.add(new EntryRow(rows.getLong(1), made.toString(), rows.getString(3), rows.getString(4),
                            rows.getString(5), rows.getString(6), rows.getString(7)));
                }
            }
            return entries;
        }
    }

    /** The number of the last entry; 0 where there is none. */
    long last() throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select max(number) from entry where project = ?")) {
            select.setString(1, id);
            try (ResultSet rows = select.executeQuery()) {
                rows.next();
                return rows.getLong(1);
            }
        }
    }

    /** The seal of an entry; empty where there is none of that number. */
    Optional<String> seal(long number) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select seal from entry where project = ? and number = ?")) {
            select.setString(1, id);
            select.setLong(2, number);
            try (ResultSet rows = select.executeQuery()) {
                return rows.next() ? Optional.of(rows.getString(1)) : Optional.empty();
            }
        }
    }

    void add(EntryRow entry) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("insert into entry (project, number, made, who,"
                + " why, kind, change, seal) values (?, ?, ?, ?, ?, ?, ?, ?)")) {
            insert.setString(1, id);
            insert.setLong(2, entry.number());
            insert.setObject(3, Instant.parse(entry.made()).atOffset(ZoneOffset.UTC));
            insert.setString(4, entry.who());
            insert.setString(5, entry.why());
            insert.setString(6, entry.kind());
            insert.setString(7, entry.change());
            insert.setString(8, entry.seal());
            insert.executeUpdate();
        }
    }

    boolean holds(Original original) throws SQLException {
        try (PreparedStatement select = connection.prepareStatement(
                "select size from original where project = ? and sha256 = ?")) {
            select.setString(1, id);
            select.setString(2, original.sha256());
            try (ResultSet rows = select.executeQuery()) {
                return rows.next() && rows.getLong(1) == original.size();
            }
        }
    }

    /** Takes in the bytes of an original that is not held yet. */
    void keep(Original original, InputStream bytes) throws SQLException, IOException {
        try (PreparedStatement insert = connection.prepareStatement(
                "insert into original (project, sha256, size) values (?, ?, ?)")) {
            insert.setString(1, id);
            insert.setString(2, original.sha256());
            insert.setLong(3, original.size());
            insert.executeUpdate();
        }
        MessageDigest digest = Digests.sha256();
        try (PreparedStatement insert = connection.prepareStatement(
                "insert into original_piece (project, sha256, number, bytes) values (?, ?, ?, ?)")) {
            byte[] piece = bytes.readNBytes(PIECE);
            for (int number = 0; piece.length > 0; number++) {
                digest.update(piece);
                insert.setString(1, id);
                insert.setString(2, original.sha256());
                insert.setInt(3, number);
                insert.setBytes(4, piece);
                insert.executeUpdate();
                piece = bytes.readNBytes(PIECE);
            }
        }
        if (!Digests.hex(digest).equals(original.sha256())) {
            throw new IOException("the file was changed while it was read");
        }
    }

    /** Writes the bytes of an original; false where they are not those that were kept. */
    boolean copy(Original original, OutputStream target) throws SQLException, IOException {
        MessageDigest digest = Digests.sha256();
        try (PreparedStatement select = connection.prepareStatement(
                "select bytes from original_piece where project = ? and sha256 = ? order by number")) {
            select.setString(1, id);
            select.setString(2, original.sha256());
            select.setFetchSize(1);
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    byte[] piece = rows.getBytes(1);
                    digest.update(piece);
                    target.write(piece);
                }
            }
        }
        return Digests.hex(digest).equals(original.sha256());
    }
}
