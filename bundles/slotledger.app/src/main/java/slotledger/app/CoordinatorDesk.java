package slotledger.app;

import java.nio.file.Path;
import java.util.List;
import slotledger.model.project.Author;
import slotledger.model.work.RoundSheet;

/** What a coordinator does with a plan of a project with a history until it is proved and closed. */
public interface CoordinatorDesk {

    /**
     * Makes the rounds of a plan anew, of all machines whose job has not ended, donors before receivers, and writes
     * them down in one entry.
     *
     * @return the rounds in the order of work; those for which no time was found name no technician
     */
    List<RoundSheet> makeRounds(Path project, RoundWish wish, Author author) throws DeskException;

    /** The rounds of the plan that is carried out, with their bags. */
    List<RoundSheet> roundSheets(Path project) throws DeskException;
}
