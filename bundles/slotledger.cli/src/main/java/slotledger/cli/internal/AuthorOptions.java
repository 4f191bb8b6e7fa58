package slotledger.cli.internal;

import picocli.CommandLine.Option;
import slotledger.app.DeskException;
import slotledger.app.DeskException.Trouble;
import slotledger.model.project.Author;

/** Who changes a project, and why. */
final class AuthorOptions {

    @Option(names = "--why", paramLabel = "TEXT", defaultValue = "", description = "Reason, kept in the history.")
    private String why = "";

    @Option(names = "--as", paramLabel = "NAME", description = "Who does it; the user of this computer unless given.")
    private String who;

    Author author() throws DeskException {
        return author(who == null ? System.getProperty("user.name", "") : who, why);
    }

    static Author author(String who, String why) throws DeskException {
        try {
            return new Author(who.isBlank() ? "unknown" : who, why);
        } catch (IllegalArgumentException problem) {
            throw new DeskException(Trouble.INPUT, problem.getMessage(), problem);
        }
    }
}
