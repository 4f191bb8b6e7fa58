package slotledger.app;

import java.nio.file.Path;
import java.util.List;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Author;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.Round;

/** The rounds of a project with a history, and how far the work on its machines has come. */
public interface WorkDesk {

    /**
     * The rounds of the plan that is carried out.
     *
     * @return none where no rounds were made yet
     */
    List<Round> rounds(Path project) throws DeskException;

    /** All jobs of the plan that is carried out, in the order of work. */
    List<Job> jobs(Path project) throws DeskException;

    /** One machine's job in the plan that is carried out. */
    Job job(Path project, AssetTag machine) throws DeskException;

    /**
     * Writes down what happened, in one entry. Events whose ids are known already are left out, so that a device may
     * send again whatever it got no answer for.
     *
     * @return the jobs that were told of, as they are now
     * @throws DeskException where nothing was written, for one where an event is about a machine that has no job
     */
    List<Job> record(Path project, List<JobEvent> events, Author author) throws DeskException;
}
