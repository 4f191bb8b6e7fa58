package slotledger.store.internal;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import slotledger.model.project.TeamRole;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** Tables, roles and rights in a team's database. */
final class TeamSchema {

    private TeamSchema() {
    }

    /** "slotledger_reader": a role that people are members of. It is the same for all databases of a server. */
    static String role(TeamRole role) {
        return "slotledger_" + role.id();
    }

    static void prepare(TeamDatabase database) throws StoreException {
        database.riding("The database " + database.name() + " can't be prepared", "Try again later.", connection -> {
            try (Statement statement = connection.createStatement();
                    ResultSet encoding = statement.executeQuery("show server_encoding")) {
                encoding.next();
                if (!encoding.getString(1).equals("UTF8")) {
                    throw new StoreException(Trouble.REFUSED, "The database " + database.name() + " writes texts as "
                            + encoding.getString(1) + ", which can't hold every name. Use one that is made with "
                            + "encoding UTF8.");
                }
            }
            return null;
        });
        try {
            Schema.team().migrate(database.single());
        } catch (SQLException problem) {
            throw new StoreException(Trouble.DENIED, "The database " + database.name() + " can't be prepared: "
                    + TeamTrouble.reason(problem) + ". Its user " + database.user() + " must own the database and may "
                    + "make roles (CREATEROLE), or be an administrator.", problem);
        }
    }

    static void mustBeToday(Connection connection, TeamDatabase database) throws SQLException, StoreException {
        int version = Schema.version(connection);
        int today = Schema.team().newest();
        if (version == 0) {
            throw new StoreException(Trouble.MISSING, "The database " + database.name() + " is not prepared, or "
                    + database.user() + " has no role in it. Whoever owns it prepares it with \"project team prepare\","
                    + " and gives roles with \"project team admit\".");
        }
        if (version < today) {
            throw new StoreException(Trouble.REFUSED, "The database " + database.name() + " has form " + version
                    + " of an earlier Slotledger. Whoever owns it brings it to today's with \"project team prepare\"; "
                    + "all of the team need today's Slotledger then.");
        }
        if (version > today) {
            throw new StoreException(Trouble.NEWER, "The database " + database.name() + " was prepared by a newer "
                    + "Slotledger (its form is " + version + ", this program knows up to " + today
                    + "). Use that one.");
        }
    }
}
