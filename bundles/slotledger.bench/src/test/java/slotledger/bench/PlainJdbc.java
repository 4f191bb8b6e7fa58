package slotledger.bench;

import java.io.IOException;
import java.io.InputStream;
import java.io.OutputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import javax.sql.DataSource;
import org.h2.jdbcx.JdbcDataSource;
import org.postgresql.ds.PGSimpleDataSource;
import slotledger.testkit.PostgresServer;

/** The same bytes and rows with nothing but batches: no seals, no history, no check that anything is as it was. */
final class PlainJdbc implements AutoCloseable {

    private static final int PIECE = 512 * 1024;
    private static final int BATCH = 16;

    private final DataSource source;
    private final String settle;
    private final Connection connection;

    private PlainJdbc(DataSource source, String settle) throws SQLException {
        this.source = source;
        this.settle = settle;
        this.connection = source.getConnection();
        run("create table piece (number integer primary key, bytes bytea not null)");
        run("create table line (number bigint primary key, text varchar(10000) not null)");
        connection.setAutoCommit(false);
    }

    static PlainJdbc h2(Path file) throws SQLException {
        JdbcDataSource source = new JdbcDataSource();
        source.setURL("jdbc:h2:file:" + file + ";WRITE_DELAY=0");
        source.setUser("plain");
        return new PlainJdbc(source, "checkpoint sync");
    }

    static PlainJdbc postgres(String url) throws SQLException {
        PGSimpleDataSource source = new PGSimpleDataSource();
        source.setURL(url);
        source.setUser(PostgresServer.ADMIN);
        source.setPassword(PostgresServer.PASSWORD);
        return new PlainJdbc(source, "select 1");
    }

    void keep(Path file) throws SQLException, IOException {
        try (PreparedStatement insert = connection.prepareStatement("insert into piece values (?, ?)");
                InputStream bytes = Files.newInputStream(file)) {
            byte[] piece = bytes.readNBytes(PIECE);
            for (int number = 1; piece.length > 0; number++) {
                insert.setInt(1, number);
                insert.setBytes(2, piece);
                insert.addBatch();
                if (number % BATCH == 0) {
                    insert.executeBatch();
                }
                piece = bytes.readNBytes(PIECE);
            }
            insert.executeBatch();
        }
        commit();
    }

    /** As many rows as entries, each on the disk before the next. */
    void add(int rows) throws SQLException {
        try (PreparedStatement insert = connection.prepareStatement("insert into line values (?, ?)")) {
            for (int i = 0; i < rows; i++) {
                insert.setLong(1, i);
                insert.setString(2, "{\"machine\":\"K-%07d\",\"fact\":\"role\",\"value\":\"lab\"}".formatted(i));
                insert.executeUpdate();
                commit();
            }
        }
    }

    void openAndRead() throws SQLException {
        try (Connection another = source.getConnection(); Statement select = another.createStatement();
                ResultSet rows = select.executeQuery("select number, text from line order by number")) {
            while (rows.next()) {
                rows.getString(2);
            }
        }
    }

    void takeOut(Path file) throws SQLException, IOException {
        try (PreparedStatement select = connection.prepareStatement("select bytes from piece order by number");
                OutputStream out = Files.newOutputStream(file)) {
            select.setFetchSize(1);
            try (ResultSet rows = select.executeQuery()) {
                while (rows.next()) {
                    out.write(rows.getBytes(1));
                }
            }
        }
    }

    private void commit() throws SQLException {
        connection.commit();
        run(settle);
    }

    private void run(String sql) throws SQLException {
        try (Statement statement = connection.createStatement()) {
            statement.execute(sql);
        }
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
