package slotledger.store.internal;

import java.sql.SQLException;
import slotledger.store.StoreException;
import slotledger.store.StoreException.Trouble;

/** Says what a team's database objects to. */
final class TeamTrouble {

    private TeamTrouble() {
    }

    /** @param what "The project can't be read" */
    static StoreException said(String name, String user, String what, SQLException problem) {
        String state = String.valueOf(problem.getSQLState());
        return switch (state) {
            case "42501" -> new StoreException(Trouble.DENIED, what + ": the database " + name
                    + " doesn't let its user " + user + " do that. Nothing was saved. Ask the coordinator for another "
                    + "role (\"project team admit\").", problem);
            case "28P01", "28000", "08004" -> new StoreException(Trouble.DENIED, what + ": the database " + name
                    + " doesn't let " + user + " in (" + reason(problem) + "). Check the user, and the password in "
                    + "PostgreSQL's password file (.pgpass) or in PGPASSWORD.", problem);
            case "3D000" -> new StoreException(Trouble.MISSING, what + ": there is no database " + name
                    + ". Check the address.", problem);
            case "53100" -> new StoreException(Trouble.UNWRITABLE, what + ": the disk of the database " + name
                    + " is full. Nothing was saved. Tell whoever runs it.", problem);
            default -> new StoreException(Trouble.UNWRITABLE, what + ": the database " + name + " says "
                    + reason(problem) + ". Nothing was saved.", problem);
        };
    }

    /** What the server or the driver said, in one line without a full stop. */
    static String reason(SQLException problem) {
        Throwable cause = problem;
        while (cause.getCause() instanceof SQLException deeper) {
            cause = deeper;
        }
        return String.valueOf(cause.getMessage()).lines().findFirst().orElse("nothing").replaceFirst("\\.$", "");
    }
}
