package slotledger.cli.internal;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import slotledger.app.WorkDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.project.Author;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.Round;

/** A door to one round of two machines: remembers what it was told. */
final class FakeWork implements WorkDesk {

    private static final List<AssetTag> TAGS = List.of(new AssetTag("K-1"), new AssetTag("K-2"));

    private final List<String> calls;

    FakeWork(List<String> calls) {
        this.calls = calls;
    }

    @Override
    public List<Round> rounds(Path project) {
        return List.of(new Round("r1", 1, "Ben", "Main", "101", Optional.empty(), TAGS));
    }

    @Override
    public List<Job> jobs(Path project) {
        return TAGS.stream().map(tag -> Job.planned(tag, 1)).toList();
    }

    @Override
    public Job job(Path project, AssetTag machine) {
        return Job.planned(machine, 1);
    }

    @Override
    public List<Job> record(Path project, List<JobEvent> events, Author author) {
        List<Job> jobs = new ArrayList<>();
        for (JobEvent event : events) {
            calls.add(event.machine() + " " + event.what() + " by " + author.who());
            jobs.add(Job.planned(event.machine(), event.plan()).after(event));
        }
        return jobs;
    }
}
