package slotledger.itest.workbench;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.osgi.service.component.annotations.Activate;
import org.osgi.service.component.annotations.Component;
import org.osgi.service.component.propertytypes.ServiceRanking;
import slotledger.app.CardDesk;
import slotledger.app.Survey;
import slotledger.app.WorkDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.task.Progress;
import slotledger.model.work.Job;
import slotledger.model.work.JobCard;
import slotledger.model.work.JobEvent;
import slotledger.model.work.Round;

/** One round of three machines, whose jobs are kept in memory. */
@Component(service = {CardDesk.class, FakeWork.class})
@ServiceRanking(1000)
public final class FakeWork implements CardDesk, WorkDesk {

    private static final List<AssetTag> MACHINES =
            List.of(new AssetTag("PC-1"), new AssetTag("PC-2"), new AssetTag("PC-12"));

    private final Map<AssetTag, Job> jobs = new LinkedHashMap<>();

    @Activate
    public FakeWork() {
        MACHINES.forEach(tag -> jobs.put(tag, Job.planned(tag, 1)));
    }

    @Override
    public List<JobCard> cards(Path project, int plan, Progress progress) {
        throw new UnsupportedOperationException("The window has read the project already.");
    }

    @Override
    public List<JobCard> cards(Survey survey, Plan planned, int plan) {
        JobCard.Picture picture = new JobCard.Picture("", List.of("A2: 4 GB"));
        return MACHINES.stream().map(tag -> new JobCard(tag, plan, "1 of 3", "North, Lab 1", "Desktop", "S" + tag,
                "4 GB to 8 GB", List.of(), List.of("Unplug it."), List.of("Open the case.", "Put 8 GB into A2."),
                "Put 4 GB into A2.", picture, picture, List.of("A2"), List.of(new JobCard.Receiving("A2", "8 GB")),
                List.of("8 GB in all.")))
                .toList();
    }

    @Override
    public List<Round> rounds(Path project) {
        return List.of(new Round("north-01", 1, "Ada", "North", "Lab 1", Optional.empty(), MACHINES));
    }

    @Override
    public synchronized List<Job> jobs(Path project) {
        return List.copyOf(jobs.values());
    }

    @Override
    public synchronized Job job(Path project, AssetTag machine) {
        return jobs.get(machine);
    }

    @Override
    public synchronized List<Job> record(Path project, List<JobEvent> events, Author author) {
        List<Job> told = new ArrayList<>();
        events.forEach(event -> told.add(jobs.merge(event.machine(), jobs.get(event.machine()),
                (job, same) -> job.after(event))));
        return told;
    }
}
