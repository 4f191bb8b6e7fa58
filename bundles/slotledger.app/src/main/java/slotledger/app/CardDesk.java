package slotledger.app;

import java.nio.file.Path;
import java.util.List;
import slotledger.model.plan.Plan;
import slotledger.model.task.Progress;
import slotledger.model.work.JobCard;

/** What technicians of a project with a history see of each machine. */
public interface CardDesk {

    /**
     * One card for each machine that a plan opens, in the order of work.
     *
     * @param survey must know the plan's boards
     * @param number the plan's number within its project, counted from 1
     */
    List<JobCard> cards(Survey survey, Plan plan, int number);

    /**
     * The same, where nothing of the project was read yet.
     *
     * @param plan number of a kept plan, counted from 1 within the project
     * @throws DeskException also where there is no such plan, or the project no longer knows one of its boards
     */
    List<JobCard> cards(Path project, int plan, Progress progress) throws DeskException;
}
