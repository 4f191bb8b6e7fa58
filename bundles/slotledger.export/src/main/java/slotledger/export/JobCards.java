package slotledger.export;

import java.util.List;
import slotledger.model.work.JobCard;

/** Turns a plan into what its technicians see on a phone. */
public interface JobCards {

    /**
     * One card for each machine that is opened, in the order of work.
     *
     * @param number the plan's number within its project, counted from 1
     */
    List<JobCard> of(PlanBook book, int number);
}
