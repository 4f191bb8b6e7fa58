package slotledger.itest.headless;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.Set;
import java.util.UUID;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import slotledger.app.DeskException;
import slotledger.app.FleetDesk;
import slotledger.app.Survey;
import slotledger.app.WorkDesk;
import slotledger.model.machine.AssetTag;
import slotledger.model.plan.Plan;
import slotledger.model.project.Author;
import slotledger.model.task.Progress;
import slotledger.model.work.Job;
import slotledger.model.work.JobEvent;
import slotledger.model.work.JobEvent.What;
import slotledger.model.work.JobState;

/** Work on the machines of a plan, kept in a real project. */
class StoredWorkTest {

    private static final Author BEN = new Author("ben", "");

    @TempDir
    Path top;

    private final FleetDesk desk = Demo.desk();
    private final WorkDesk work = desk.work();

    @Test
    void workIsRecordedBesideOtherChangesAndCanBeTakenBack() throws Exception {
        Path project = top.resolve("school");
        desk.projects().create(project, Optional.of(Demo.folder()), BEN);
        assertTrue(assertThrows(DeskException.class, () -> work.jobs(project)).getMessage().contains("no plan yet"));
        Survey survey = desk.survey(Demo.open(project), Progress.NONE);
        Plan plan = desk.plan(survey, Progress.NONE);
        desk.export(survey, plan, top.resolve("plan"), false, Progress.NONE);
        desk.projects().keepPlan(survey, top.resolve("plan/plan.json"), BEN);

        List<Job> jobs = work.jobs(project);
        assertEquals(plan.work().stream().map(each -> each.machine().tag()).toList(),
                jobs.stream().map(Job::machine).toList());
        AssetTag first = jobs.get(0).machine();
        work.record(project, List.of(event(first, new What.Ticked(1, true))), BEN);
        desk.projects().bringIn(project, List.of(Demo.folder().resolve("policy.yaml")), BEN);
        work.record(project, List.of(event(first, new What.Became(JobState.DONE, ""))), BEN);
        assertEquals(Set.of(1), work.job(project, first).ticked());
        assertEquals(JobState.DONE, work.job(project, first).state());

        desk.projects().undo(project, OptionalLong.empty(), BEN);
        assertEquals(JobState.PLANNED, work.job(project, first).state());
        assertEquals(Set.of(1), work.job(project, first).ticked());
    }

    private static JobEvent event(AssetTag machine, What what) {
        return new JobEvent(UUID.randomUUID(), machine, 1, Instant.now(), what);
    }
}
